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
