/** Jobs that come at random to some saws. */
export interface Queue {
  /** Share of the saws' time that they take, u [-]. */
  readonly share: number;
  readonly saws: number;
  /** Minutes of a job: mean, and squared coefficient of variation cs². */
  readonly mean: number;
  readonly variation: number;
}

/**
 * Mean wait for a saw in the long run, (1 + cs²)/2 · u^(√(2(saws + 1)) − 1)/(saws·(1 − u)) · mean. Exact for one saw (Pollaczek and
 * Khinchine), an approximation for several.
 * @param queue share u below 1, saws [-]; mean [min]; variation cs² [-]
 * @returns the wait [min]
 * @source Kingman's formula as in Factory Physics (from memory); several saws: Sakasegawa 1977 (from memory)
 */
export function longRunWait({ share, saws, mean, variation }: Queue): number {
  return ((1 + variation) / 2) * (share ** (Math.sqrt(2 * (saws + 1)) - 1) / (saws * (1 - share))) * mean;
}
