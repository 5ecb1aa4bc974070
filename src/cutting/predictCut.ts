import type { Pitch } from "../blade/pitch";
import { cuttingConstants as k } from "../data/cuttingConstants";
import type { Cut, CutRun, PitchedWork } from "./cut";
import { cutMinutes } from "./cutMinutes";
import { prepareCut } from "./prepareCut";
import { refusePush } from "./refusePush";
import { solvedOnce } from "./solvedOnce";
import { runCut } from "./runCut";
import { nominal, type Scenario } from "./wayDown";

/** A predicted cut with every value on the way, low and high with it. */
export interface CutPrediction {
  readonly pitch: Pitch;
  readonly cut: Cut;
  readonly run: CutRun;
  readonly rate: number;
  readonly rateLow: number;
  readonly rateHigh: number;
}

const lowOf = (spread: number): Scenario => ({
  rate: 1 / spread,
  force: k.forceLow.value,
  feedShare: k.feedShareLow.value,
});
const highOf = (spread: number): Scenario => ({
  rate: spread,
  force: 1 / k.forceHigh.value,
  feedShare: 1 / k.feedShareHigh.value,
});

/** Low and high of the rate. */
function ends(work: PitchedWork, cut: Cut, { rate }: CutRun): readonly [low: number, high: number] {
  const own = cut.rateSpread;
  if (own !== undefined) {
    const at = (factor: number): number => cutMinutes(prepareCut({ ...work, pitch: cut.pitch }, factor), nominal).rate;
    return [at(1 / own), at(own)];
  }
  const { spread } = cut.row;
  const { maximumFeed, feedForce, power } = cut.saw.limits;
  if (maximumFeed === undefined && feedForce === undefined && power === undefined)
    return [rate / spread, rate * spread];
  return [
    Math.min(cutMinutes(cut, lowOf(spread)).rate, rate / k.leastSpread.value),
    Math.max(cutMinutes(cut, highOf(spread)).rate, rate * k.leastSpread.value),
  ];
}

/**
 * Predicts a cut: pitch (chosen unless given), band speed, the way down, and the rate's low and high. With S of the group
 * and class and no limit of a saw these are rate/S and rate·S; on a saw that is described two more runs, bite and room ÷
 * and × S with force and feed share moved as well, never nearer than ×/÷1.15. With a rate spread of the shop they are the
 * cut with its bite ÷ and × the spread, nothing else.
 * @param work section, material, blade, shop; pitch teeth per inch [1/in]
 * @returns pitch, cut and run, rate, rateLow, rateHigh [mm²/min]
 * @throws InputError "none": no data, no lawful pitch, saw too fast, band too weak; "invalid": as prepareCut
 * @source data/groups, data/cuttingConstants; which groups are calibrated on what: docs/sources.md
 */
export function predictCut(work: PitchedWork): CutPrediction {
  return solvedOnce("cut", work, () => predict(work));
}

function predict(work: PitchedWork): CutPrediction {
  const cut = prepareCut(work);
  const { pitch } = cut;
  const run = runCut(cut, nominal);
  refusePush(work, cut, run);
  const [rateLow, rateHigh] = ends(work, cut, run);
  return { pitch, cut, run, rate: run.rate, rateLow, rateHigh };
}
