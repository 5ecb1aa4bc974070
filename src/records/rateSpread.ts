import { recordsConstants as k } from "../data/recordsConstants";
import { studentQuantile } from "../statistics/studentQuantile";
import type { TwoLevels } from "../statistics/twoLevel";

/**
 * The factor that the next cut of a group lies within, ÷ and ×, with 80 %: exp(t·√(variance + σ²)), t of Student's distribution
 * with the fit's degrees of freedom and 90 % below it.
 * @param fit of ln of the factors [-]
 * @param group its place in the fit
 * @returns spread, 1 or more [-]
 * @source predictive distribution of the model of twoLevel, σ² known to ν degrees of freedom
 */
export function rateSpread({ groups, scatter2, df }: TwoLevels, group: number): number {
  return Math.exp(studentQuantile(k.upperShare.value, df) * Math.sqrt(groups[group]!.variance + scatter2));
}
