import type { Section } from "./section";
import type { Contact, Part, Spread } from "./slab";

/** What the band meets over a small part of its way down. */
export interface Station {
  /** Depth below the top of the stack [mm]; equal rows of a bundle, and the lower half of a bar that is its own
   * mirror image, share the stations of the first. */
  readonly depth: number;
  /** Way of the band for which this station stands [mm]; all together they are the height. */
  readonly travel: number;
  /** Total contact L [mm]. */
  readonly contact: number;
  /** From the first to the last contact e [mm]. */
  readonly extent: number;
  /** Longest single contact [mm]; contacts less than 0.5 mm apart count as one. */
  readonly longest: number;
  /** Shortest single contact [mm]; the same. */
  readonly shortest: number;
}

/** The stations of one slab, with what the band meets right at its top and bottom. */
export interface SlabRun extends Part {
  readonly stations: readonly Station[];
  /** Exact area of the slab / its quadrature [-]: every width of the stations carries it. */
  readonly factor: number;
  readonly first: Contact;
  readonly last: Contact;
}

export type Kind = "solid" | "hollow" | "bundle of solids" | "bundle of hollow";

export interface Profile {
  readonly section: Section;
  /** Cut area of the whole stack [mm²]: the sum of travel × contact. */
  readonly area: number;
  /** Height of the stack [mm]: the sum of travel. */
  readonly height: number;
  /** area / height [mm]. */
  readonly meanWidth: number;
  /** Most total contact at one depth [mm]. */
  readonly maximumWidth: number;
  /** Overall width of the stack along the band [mm]. */
  readonly maximumExtent: number;
  /** Longest single contact at one depth [mm]. */
  readonly longestContact: number;
  /** Thinnest lasting contact: a fifth of the way has a shorter single contact [mm]; for solids at most the mean width. */
  readonly thinnest: number;
  readonly kind: Kind;
  /** The stack slab by slab, drawn 1/scale of its size: splitStations begins there. A round has those of the unit round. */
  readonly runs: readonly SlabRun[];
  readonly spread: Spread;
  /** Height of one bar as drawn [mm]. */
  readonly barHeight: number;
  readonly scale: number;
}
