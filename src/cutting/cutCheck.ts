import { cuttingConstants as k } from "../data/cuttingConstants";
import { scenarios } from "./scenarios";
import type { Phrase, Text } from "../phrase";
import type { Profile } from "../section/section";
import { bladeRow } from "./bladeRow";
import { cautionsOf } from "./cautionsOf";
import { cutFactors } from "./cutFactors";
import type { Pitch } from "../blade/pitch";
import { predictCut } from "./predictCut";
import { prepareCut, type CutWork } from "./prepareCut";
import { teethInCut } from "./teethInCut";

export interface CutCheckInput extends CutWork {
  readonly pitch: Pitch;
  readonly bandSpeed: number;
  readonly minutes: number;
}

/** What the sawyer sees of the cut, and the group's range for it with all factors in. */
interface Seen {
  readonly fewest: number;
  readonly fill: number;
  readonly chip: number;
  readonly speed: number;
  readonly rate: number;
  readonly leastSpeed: number;
  readonly mostSpeed: number;
  readonly leastChip: number;
  readonly mostChip: number;
  readonly rateLow: number;
  readonly rateHigh: number;
}

/** The faults in the order in which they spoil a blade; the first that holds is the verdict. */
const faults: readonly (readonly [holds: (s: Seen) => boolean, template: string])[] = [
  [
    (s) => s.fewest < k.fewestFinestTeeth.value,
    "Take a finer pitch first: only {fewest} of a tooth stands in the thinnest part.",
  ],
  [(s) => s.fill > 1, "Take a coarser pitch first: the gullets hold {fill} times what fits."],
  [(s) => s.speed > s.mostSpeed, "Slow the band first: {speed} is above the fastest for this group, {mostSpeed}."],
  [(s) => s.chip > s.mostChip, "Take feed off first: a chip of {chip} is above what a tooth stands, {mostChip}."],
  [
    (s) => s.chip < s.leastChip,
    "Raise the feed first, or take a coarser pitch: a chip of {chip} rubs; teeth cut from {leastChip} up.",
  ],
  [
    (s) => s.speed < s.leastSpeed,
    "Raise the band speed first: {speed} is below the slowest for this group, {leastSpeed}.",
  ],
  [(s) => s.rate < s.rateLow, "Raise the feed first: {rate} is below the usual {rateLow} to {rateHigh}."],
  [
    (s) => s.rate > s.rateHigh,
    "Faster than usual, {rate} against {rateLow} to {rateHigh}: watch the blade's life before anything is changed.",
  ],
];

const verdictOf = (seen: Seen): Phrase => {
  const found = faults.find(([holds]) => holds(seen));
  const of = (quantity: "chip" | "bandSpeed" | "areaRate", number: number) => ({ number, quantity });
  return {
    template: found?.[1] ?? "Leave it as it is: {rate} is within the usual {rateLow} to {rateHigh}.",
    facts: {
      fewest: String(Number(seen.fewest.toPrecision(2))),
      fill: String(Number(seen.fill.toPrecision(2))),
      speed: of("bandSpeed", seen.speed),
      mostSpeed: of("bandSpeed", seen.mostSpeed),
      leastSpeed: of("bandSpeed", seen.leastSpeed),
      chip: of("chip", seen.chip),
      mostChip: of("chip", seen.mostChip),
      leastChip: of("chip", seen.leastChip),
      rate: of("areaRate", seen.rate),
      rateLow: of("areaRate", seen.rateLow),
      rateHigh: of("areaRate", seen.rateHigh),
    },
  };
};

/** Fullest gullet on the way: a saw of constant rate thins the chip where the contact is long, one of constant feed does not. */
const fullest = (
  profile: Profile,
  meanChip: number,
  pitch: Pitch,
  chipVolume: number,
  constantFeed: boolean,
): number => {
  const room = k.gulletArea.value * k.gulletFill.value * pitch.mean ** 2;
  return Math.max(
    ...profile.stations
      .filter((s) => s.contact > 0)
      .map(
        (s) => ((constantFeed ? meanChip : (meanChip * profile.meanWidth) / s.contact) * s.joined * chipVolume) / room,
      ),
  );
};

/**
 * Judges a cut as it runs now: rate = A/minutes, mean chip = rate·p/(v·W), teeth, gullet fill, speed against the group's
 * nominal one, and what to change first.
 * @param input section; material; blade; pitch [1/in]; bandSpeed v [mm/min]; minutes of cutting [min]; shop
 * @returns verdict [text]; rate [mm²/min]; chipThickness [mm]; teeth, gulletFill, speedAgainstGroup [-]; cautions [text]
 * @throws InputError "none": no cutting data, too hard for bi-metal; "invalid": work too big for the saw, an area alone
 * @source kinematics: German vocational tables book, sawing page (read); ranges: data/groups; the order of the faults: judgement
 */
export function cutCheck(input: CutCheckInput) {
  const { section, material, blade, pitch, bandSpeed, minutes, shop } = input;
  const profile = section.profile();
  const { group, row } = bladeRow(material, blade);
  const factors = cutFactors({ profile, material, group, shop });
  const prepared = prepareCut(input, scenarios.nominal);
  const predicted = predictCut(input);
  const teeth = teethInCut({ profile, pitch });
  const rate = section.area / minutes;
  const chip = (rate * pitch.mean) / (bandSpeed * profile.meanWidth);
  const fill = fullest(profile, chip, pitch, group.chipVolume, shop.feedMode === "constant feed");
  const leastChip = Math.min(k.rubbingChip.value, 0.7 * prepared.nominalChip);
  const seen = {
    fewest: teeth.fewest,
    fill,
    chip,
    speed: bandSpeed,
    rate,
    leastSpeed: row.speed.low * factors.speed,
    mostSpeed: row.speed.high * factors.speed,
    leastChip,
    mostChip: row.chip.high * factors.chip * factors.interrupted,
    rateLow: predicted.rateLow,
    rateHigh: predicted.rateHigh,
  };
  return {
    verdict: verdictOf(seen) as Text,
    rate,
    chipThickness: chip,
    teeth: teeth.mean,
    gulletFill: fill * k.gulletFill.value,
    speedAgainstGroup: bandSpeed / (row.speed.nominal * factors.speed),
    cautions: cautionsOf(material) as Text,
  };
}
