/** What is known of a row of values. */
export interface Sample {
  readonly count: number;
  readonly mean: number;
  /** Squared standard deviation, by count − 1. */
  readonly variance: number;
}

/**
 * Mean and variance of values.
 * @param values two or more for the variance [any unit]
 * @returns count [-], mean [unit of the values], variance [its square]; variance 0 of a single value
 * @source definition
 */
export function sampleOf(values: readonly number[]): Sample {
  const count = values.length;
  const mean = values.reduce((a, b) => a + b, 0) / count;
  const squares = values.reduce((s, v) => s + (v - mean) ** 2, 0);
  return { count, mean, variance: count > 1 ? squares / (count - 1) : 0 };
}
