import { studentShare } from "./studentShare";

/**
 * The value of Student's t distribution that a share of it lies below, by halving.
 * @param share from 0.5 to below 1 [-]
 * @param df degrees of freedom, 1 or more [-]
 * @returns t [-]
 * @source standard
 */
export function studentQuantile(share: number, df: number): number {
  let [low, high] = [0, 1];
  while (studentShare(high, df) < share) high *= 2;
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (studentShare(middle, df) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
