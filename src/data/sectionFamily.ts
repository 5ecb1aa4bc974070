import type { SectionSource } from "./sectionSources";

/**
 * A family of rolled shapes. One row per line, the designation's numbers first (and after a bar those of the metric designation), then:
 * - beam, channel: depth, width, web, flange, root radius, published area, toe radius where there is one;
 * - tee: depth, published area; width, web, flange and root are those of the W shape of twice its numbers, from which it is cut;
 * - angle (legs and thickness are its numbers): root radius, published area (none for some mill sizes), toe radius where it is not half the root.
 */
export interface SectionFamily {
  readonly name: string;
  readonly kind: "beam" | "channel" | "tee" | "angle";
  /** Inches with areas in in², or millimetres with areas in cm². */
  readonly unit: "in" | "mm";
  readonly source: SectionSource;
  /** How the flange falls towards its tip; see rolledShape. */
  readonly slope: "none" | "american" | "ipn" | "upn";
  readonly rows: string;
}
