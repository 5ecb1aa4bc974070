/** A corner of a closed loop: where its two straight sides would meet [mm], and the radius that rounds it [mm]. */
export interface Corner {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

/**
 * A cross-section as closed loops of straight sides with rounded corners; y is the depth below the top [mm], x runs
 * across [mm]. Outer loops turn one way, holes the other. A circle is a square whose corners have half its side as radius.
 */
export interface Outline {
  readonly loops: readonly (readonly Corner[])[];
}

/** One stack of bars as it lies in the vice, cut in one pass. */
export interface Section {
  /** Canonical size with its units written: reading it again gives an equal section. */
  readonly text: string;
  /** How the size was read: assumed unit, how the bar lies, what was taken for granted. */
  readonly note: string;
  /** Cut area of the whole stack, mitre included [mm²]; from the published area where the table has one. */
  readonly area: number;
  /** Bars in the stack [-]. */
  readonly pieces: number;
  readonly rows: number;
  readonly columns: number;
  /** Rows of rounds that lie in the hollows of the row below. */
  readonly nested: boolean;
  /** Square-cut area of one bar [mm²]: mass comes from it. */
  readonly pieceArea: number;
  /** Hollow or structural (tube, angle, channel, tee, beam): the cut is interrupted. */
  readonly hollow: boolean;
  /** Angle of the swivelled head from a square cut [°]. */
  readonly mitre: number;
  /** One bar as it lies; undefined where only an area is known. */
  readonly outline: Outline | undefined;
}

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
  /** Longest run of contacts less than 20 mm apart, their sum Lm [mm]. */
  readonly joined: number;
  /** Longest single contact [mm]. */
  readonly longest: number;
  /** Shortest single contact [mm]. */
  readonly shortest: number;
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
  readonly longestContact: number;
  readonly longestJoined: number;
  /** Thinnest lasting contact: a fifth of the way has a shorter single contact [mm]; for solids at most the mean width. */
  readonly thinnest: number;
  readonly kind: Kind;
  readonly stations: readonly Station[];
}
