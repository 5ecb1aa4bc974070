/** A tooth pitch as it is ordered: teeth per inch at the coarse and the fine end; both are equal for a straight pitch. */
export interface Pitch {
  readonly text: string;
  readonly coarse: number;
  readonly fine: number;
  /** Mean pitch [mm], 25.4 / ((coarse + fine) / 2): the mean of the teeth per inch, as the trade counts. */
  readonly mean: number;
}
