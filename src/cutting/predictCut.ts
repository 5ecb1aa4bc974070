import { cuttingConstants as k } from "../data/cuttingConstants";
import { scenarios } from "./scenarios";
import { nominalCut } from "./nominalCut";
import type { Pitch } from "../blade/pitch";
import type { CutWork } from "./prepareCut";
import { solveCut, type SolvedCut } from "./solveCut";

/** A predicted cut with every value on the way, low and high with it. */
export interface CutPrediction extends SolvedCut {
  readonly pitch: Pitch;
  /** The motor made the band run slower than the group and the saw allow. */
  readonly slowed: boolean;
  readonly rate: number;
  readonly rateLow: number;
  readonly rateHigh: number;
}

/**
 * Predicts a cut: the nominal one, and low and high with the uncertain constants moved together, never nearer than
 * ×/÷1.15. About 80 % of cuts fall between them.
 * @param work section, material, blade, shop; pitch teeth per inch [1/in]
 * @returns rate, rateLow, rateHigh [mm²/min], speed [mm/min] and the run's values
 * @throws InputError as nominalCut
 * @source data/groups, data/cuttingConstants; the duplex and precipitation-hardening row is calibrated on common practice, the others are not measured
 */
export function predictCut(work: CutWork & { readonly pitch: Pitch | undefined }): CutPrediction {
  const nominal = nominalCut(work);
  const { pitch, run, speed, cut } = nominal;
  const low = solveCut({ work, pitch, scenario: scenarios.low }).run.rate;
  const high = solveCut({ work, pitch, scenario: scenarios.high }).run.rate;
  const spread = k.leastSpread.value;
  return {
    ...nominal,
    slowed: speed < cut.speed,
    rate: run.rate,
    rateLow: Math.min(low, run.rate / spread),
    rateHigh: Math.max(high, run.rate * spread),
  };
}
