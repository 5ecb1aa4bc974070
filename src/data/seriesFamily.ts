import type { SectionSource } from "./sectionSources";

/**
 * A table of rolled shapes of a further standard, millimetres, one row per line. Areas are not among its cells: they follow
 * from the outline, which meets the published areas and masses within 1 % (test/data/section/series.csv).
 */
export interface SeriesFamily {
  readonly name: string;
  readonly kind: "beam" | "channel" | "tee" | "angle";
  readonly source: SectionSource;
  /**
   * How many cells at the beginning of a row are its designation: 1 the nominal depth; 2 the nominal depth and the mass
   * [kg/m], or a letter as its number (a 1, b 2, c 3; empty: none); 3 legs and thickness; 4 depth, width, web and flange.
   */
  readonly key: 1 | 2 | 3 | 4;
  /** The second cell of the designation is a mass, and not a letter. */
  readonly mass?: true;
  /**
   * Which cells are depth, width, web, flange, root and toe radius; of an angle the legs, the thickness, root and toe. A toe
   * of -2 is half of the root, one of -3 a third of the thickness; none is 0.
   */
  readonly cells: readonly number[];
  /** Rows are meant only where mass or width is written behind the name. */
  readonly byMass?: true;
  /** Cell of the published area [cm²], where the outline leaves something out. */
  readonly area?: number;
  /** Fall of the flange's inner face; the thickness printed is that at the middle of the outstand. */
  readonly slope: number;
  readonly rows: string;
}
