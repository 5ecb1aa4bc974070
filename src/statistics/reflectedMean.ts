import { normalShare } from "./normalShare";

interface Reflected {
  /** Drift a and variance v in a unit of time. */
  readonly drift: number;
  readonly variance: number;
  readonly time: number;
}

/** Below this the series of the same formula is taken: the formula divides by the drift. */
const nearNone = 0.1;

/**
 * Mean at time t of Brownian motion that is held back at 0 and begins there: v/(2a)·(2Φ(d) − 1) + a·t·Φ(d) + √(v·t)·φ(d),
 * d = a·√(t/v); without drift √(2·v·t/π); in the long run v/(2|a|) where it falls.
 * @param motion drift a, variance v, time t
 * @returns the mean, in the unit of the motion [-]
 * @source J. M. Harrison, Brownian Motion and Stochastic Flow Systems (from memory)
 */
export function reflectedMean({ drift, variance, time }: Reflected): number {
  if (time <= 0) return 0;
  const deviation = Math.sqrt(variance * time);
  const d = (drift * time) / deviation;
  if (Math.abs(d) < nearNone) return deviation * ((2 + d ** 2 / 3 - d ** 4 / 60) / Math.sqrt(2 * Math.PI) + d / 2);
  const density = Math.exp((-d * d) / 2) / Math.sqrt(2 * Math.PI);
  return (variance / (2 * drift)) * (2 * normalShare(d) - 1) + drift * time * normalShare(d) + deviation * density;
}
