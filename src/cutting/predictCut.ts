import type { Pitch } from "../blade/pitch";
import { cuttingConstants as k } from "../data/cuttingConstants";
import { InputError } from "../errors";
import type { Cut, CutRun, PitchedWork } from "./cut";
import { prepareCut } from "./prepareCut";
import { solvedOnce } from "./solvedOnce";
import { nominal, runCut, type Scenario } from "./runCut";

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

/** The feed force holds over half of the area, and what it leaves there is no chip. */
const cannotPush = ({ pushed, pushedChip }: CutRun): boolean =>
  pushed > k.mostOf.value && pushedChip < k.forceChip.value;

function refusePush(work: PitchedWork, cut: Cut): InputError {
  const { pitch } = cut;
  const coarser = [...(work.shop.pitchesStocked ?? cut.plan.made)].sort((a, b) => a.mean - b.mean);
  const works = coarser.find(
    (p) => p.mean > pitch.mean && !cannotPush(runCut(prepareCut({ ...work, pitch: p }), nominal)),
  );
  return new InputError(
    "none",
    "",
    `The {band} band cannot be pushed into {teeth} teeth${works === undefined ? ", nor into any coarser pitch: closer guides, a wider band, or turn the work" : "; the nearest pitch that it can push is {pitch}"}`,
    {
      band: { number: cut.saw.band.width, quantity: "size" },
      teeth: String(Math.round(cut.profile.meanWidth / pitch.mean)),
      pitch: works?.text ?? "",
    },
  );
}

/** Low and high of the rate. */
function ends(work: PitchedWork, cut: Cut, { rate }: CutRun): readonly [low: number, high: number] {
  const own = cut.rateSpread;
  if (own !== undefined) {
    const at = (factor: number): number => runCut(prepareCut({ ...work, pitch: cut.pitch }, factor), nominal).rate;
    return [at(1 / own), at(own)];
  }
  const { spread } = cut.row;
  const { maximumFeed, feedForce, power } = cut.saw.limits;
  if (maximumFeed === undefined && feedForce === undefined && power === undefined)
    return [rate / spread, rate * spread];
  return [
    Math.min(runCut(cut, lowOf(spread)).rate, rate / k.leastSpread.value),
    Math.max(runCut(cut, highOf(spread)).rate, rate * k.leastSpread.value),
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
  if (cannotPush(run)) throw refusePush(work, cut);
  const [rateLow, rateHigh] = ends(work, cut, run);
  return { pitch, cut, run, rate: run.rate, rateLow, rateHigh };
}
