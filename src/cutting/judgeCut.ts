import type { Pitch } from "../blade/pitch";
import { cuttingConstants as k } from "../data/cuttingConstants";
import type { Fact } from "../errors";
import type { Phrase } from "../phrase";
import type { CutPrediction } from "./predictCut";

/** A cut as it runs, beside what is predicted for it. */
export interface Seen {
  readonly rate: number;
  readonly bandSpeed: number;
  readonly chip: number;
  readonly gulletFill: number;
  readonly predicted: CutPrediction;
  /** The same on a saw that limits nothing. */
  readonly free: CutPrediction;
  /** The pitch that would be chosen. */
  readonly best: Pitch;
}

export interface Verdict {
  readonly says: Phrase;
  /** What is to be set instead of what runs. */
  readonly set: "as it runs" | "this pitch" | "best pitch";
}

const slack = 2 - k.ruleSlack.value;

/** All that the verdict weighs. */
function weigh({ rate, bandSpeed, chip, gulletFill, predicted, free, best }: Seen) {
  const { cut, pitch } = predicted;
  const perTravel = rate / bandSpeed;
  const [own, most] = [predicted.rate / predicted.run.speed, free.rate / free.run.speed];
  return {
    rate,
    speed: bandSpeed,
    chip,
    fill: gulletFill,
    teeth: cut.profile.thinnest / pitch.mean,
    bestTeeth: cut.profile.thinnest / best.mean,
    finer: best.mean < pitch.mean * (1 - 1e-9),
    coarser: best.mean > pitch.mean * (1 + 1e-9),
    times: cut.plan.factor(best) / cut.pitchFactor,
    load: perTravel / own,
    freeLoad: perTravel / most,
    spread: cut.row.spread,
    wanted: cut.speeds.wanted,
    advised: predicted.run.speed,
    atSlowest: bandSpeed <= cut.speeds.slowest * slack,
    atTop: bandSpeed >= cut.speeds.top / slack,
    rateLow: predicted.rateLow,
    rateHigh: predicted.rateHigh,
  };
}
type Weighed = ReturnType<typeof weigh>;

/** The faults in the order in which they spoil a blade or the time; the first that holds is the verdict. */
const faults: readonly (readonly [holds: (w: Weighed) => boolean, template: string, set: Verdict["set"]])[] = [
  [
    (w) => w.teeth < (k.fewestTeeth.value * k.ruleSlack.value) / slack && w.finer,
    "Take a finer pitch first: {best} puts {bestTeeth} teeth into the thinnest part.",
    "best pitch",
  ],
  [
    (w) => w.fill > k.overfull.value * slack && w.coarser,
    "Take a coarser pitch first: {best}; the gullets hold {fill} times what fits.",
    "best pitch",
  ],
  [
    (w) => w.speed > k.fastBand.value * w.wanted * slack && !w.atSlowest,
    "Slow the band first: {speed} is far above what suits this work, {wanted}.",
    "this pitch",
  ],
  [
    (w) => w.times > slack / k.wrongPitch.value && (w.finer || w.coarser),
    "Take {best} first: at {pitch} this cut takes {times} times as long.",
    "best pitch",
  ],
  [
    (w) => w.freeLoad > w.spread * slack,
    "Reduce the feed first: chip load {chip} exceeds what a tooth takes, {mostChip}.",
    "this pitch",
  ],
  [
    (w) => w.load * slack * w.spread < 1,
    "Raise the feed first: chip load {chip} is too thin and rubs; use at least {leastChip}.",
    "this pitch",
  ],
  [
    (w) => w.speed * slack < k.slowBand.value * w.advised && !w.atTop,
    "Raise the band speed first: {speed} is far below what suits this work on this saw, {advised}.",
    "this pitch",
  ],
  [
    (w) => w.rate * slack < w.rateLow,
    "Raise the feed first: {rate} is below the usual {rateLow} to {rateHigh}.",
    "this pitch",
  ],
  [
    (w) => w.rate > w.rateHigh * slack,
    "Faster than usual, {rate} against {rateLow} to {rateHigh}: watch the blade's life before anything is changed.",
    "as it runs",
  ],
];

/**
 * Judges a cut against its prediction on this saw at this pitch; every comparison with 2 % of slack.
 * @param seen what runs: rate [mm²/min], band speed [mm/min], chip [mm], gullet fill [-]; predictions; best pitch
 * @returns the verdict [text] with its facts, and what is to be set instead
 * @source the order of the faults and their thresholds: judgement, data/cuttingConstants
 */
export function judgeCut(seen: Seen): Verdict {
  const w = weigh(seen);
  const { cut, run, pitch } = seen.predicted;
  const found = faults.find(([holds]) => holds(w));
  const of = (quantity: "chip" | "bandSpeed" | "areaRate" | "power", number: number): Fact => ({
    number,
    quantity,
    digits: k.saidDigits.value,
  });
  const digits = (n: number): string => String(Number(n.toPrecision(k.saidDigits.value)));
  const motor = run.shares["motor power"] > k.mostOf.value ? " Motor-limited: {power} available at the band." : "";
  const template = found?.[1] ?? `Leave it as it is: {rate} is within the usual {rateLow} to {rateHigh}.${motor}`;
  const facts = {
    best: seen.best.text,
    pitch: pitch.text,
    bestTeeth: digits(w.bestTeeth),
    fill: digits(w.fill),
    times: digits(w.times),
    speed: of("bandSpeed", w.speed),
    wanted: of("bandSpeed", w.wanted),
    advised: of("bandSpeed", w.advised),
    chip: of("chip", w.chip),
    mostChip: of("chip", (w.chip * w.spread) / w.freeLoad),
    leastChip: of("chip", w.chip / (w.load * w.spread)),
    rate: of("areaRate", w.rate),
    rateLow: of("areaRate", w.rateLow),
    rateHigh: of("areaRate", w.rateHigh),
    power: of("power", cut.saw.limits.power ?? 0),
  };
  return { says: { template, facts }, set: found?.[2] ?? "as it runs" };
}
