import type { BarShape } from "./barShape";

/** One bar as its size names it, before it is turned and stacked. */
export interface Bar {
  /** Canonical size without orientation. */
  readonly text: string;
  /** How it was read. */
  readonly notes: readonly string[];
  /** Undefined where only an area is known. */
  readonly shape: BarShape | undefined;
  /** Published area, or the area given [mm²]. */
  readonly area?: number;
}
