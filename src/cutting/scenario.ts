/** Multipliers on the uncertain constants, moved together for the low and the high end of a rate. */
export interface Scenario {
  readonly rate: number;
  readonly force: number;
  readonly feedShare: number;
  readonly toothLoad: number;
  readonly chipVolume: number;
}
