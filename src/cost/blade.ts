/** A blade to compare: life and rate share one area unit, the buyer's own. */
export interface Blade {
  /** Price of one blade [money]. */
  readonly price: number;
  /** Area one blade cuts [area]. */
  readonly life: number;
  /** Area cut per minute [area/min]. */
  readonly rate: number;
  /** What the bar turned into chips costs per unit of area [money/area]; undefined: not counted. */
  readonly kerf?: number;
}

/** A blade of which at most one value is open: the one that is solved for. */
export interface Offer {
  readonly price: number | undefined;
  readonly life: number | undefined;
  readonly rate: number | undefined;
  readonly kerf?: number;
}
