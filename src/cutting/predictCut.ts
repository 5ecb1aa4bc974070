import { cuttingConstants as k } from "../data/cuttingConstants";
import { scenarios } from "../data/scenarios";
import { InputError } from "../errors";
import { bestSpeed } from "./bestSpeed";
import { choosePitch } from "./choosePitch";
import type { Cut, CutRun } from "./cut";
import type { Pitch } from "./pitch";
import { prepareCut, type CutWork, type PreparedCut } from "./prepareCut";
import type { Scenario } from "./scenario";

/** A predicted cut with every value on the way, low and high with it. */
export interface CutPrediction {
  readonly cut: Cut;
  readonly prepared: PreparedCut;
  readonly pitch: Pitch;
  readonly run: CutRun;
  /** Band speed that is to be set [mm/min]. */
  readonly speed: number;
  /** The motor made the band run slower than the group and the saw allow. */
  readonly slowed: boolean;
  readonly rate: number;
  readonly rateLow: number;
  readonly rateHigh: number;
}

const solve = (work: CutWork, pitch: Pitch, scenario: Scenario): { readonly cut: Cut; readonly prepared: PreparedCut; readonly run: CutRun; readonly speed: number } => {
  const prepared = prepareCut(work, scenario);
  const cut = prepared.forPitch(pitch);
  return { cut, prepared, ...bestSpeed({ cut, slowest: prepared.slowestSpeed, wanted: prepared.wantedSpeed }) };
};

/**
 * Predicts a cut: pitch (chosen unless given), band speed, and the removal rate integrated over the way down; low and
 * high with the uncertain constants moved together, never nearer than ×/÷1.15. About 80 % of cuts fall between them.
 * @param work section, material, blade, shop; pitch teeth per inch [1/in]
 * @returns rate, rateLow, rateHigh [mm²/min], speed [mm/min] and the run's values
 * @throws InputError "none": no data, no lawful pitch, saw too fast, band too weak; "invalid": work too big, magnesium flooded
 * @source data/groups, data/cuttingConstants; the duplex and precipitation-hardening row is calibrated on common practice, the others are not measured
 */
export function predictCut(work: CutWork & { readonly pitch: Pitch | undefined }): CutPrediction {
  const pitch = work.pitch ?? choosePitch(work);
  const nominal = solve(work, pitch, scenarios.nominal);
  const { run, speed, prepared, cut } = nominal;
  const force = run.shares[4]!;
  if (force > 0 && force >= Math.max(...run.shares) && run.meanChip < k.forceChip.value) {
    const facts = { band: { number: prepared.band.width, quantity: "size" as const }, teeth: String(Math.round(work.section.profile().greatestWidth / pitch.mean)) };
    throw new InputError("none", "", "The {band} band cannot be pushed into {teeth} teeth at this span: closer guides, a wider band, or turn the work", facts);
  }
  const low = solve(work, pitch, scenarios.low).run.rate;
  const high = solve(work, pitch, scenarios.high).run.rate;
  const spread = k.leastSpread.value;
  return { cut, prepared, pitch, run, speed, slowed: speed < cut.speed, rate: run.rate, rateLow: Math.min(low, run.rate / spread), rateHigh: Math.max(high, run.rate * spread) };
}
