import { cuttingConstants as k } from "../data/cuttingConstants";
import { symptomConstants as s } from "../data/symptomConstants";
import type { Shop } from "../shop/shop";
import { workHardens } from "./workHardens";
import type { CutSigns } from "./cutSigns";

/** A condition: when it holds, and what is said of it, with its number. */
export type Condition = readonly [holds: (c: CutSigns) => boolean, says: string];

const slack = 2 - k.ruleSlack.value;
const lawful = (k.fewestTeeth.value * k.ruleSlack.value) / slack;
const said = ({ shop }: CutSigns, label: keyof Shop): boolean => shop.given.includes(label);
const wrongPitch = (c: CutSigns): boolean => c.factor < k.wrongPitch.value;
const tooFine = (c: CutSigns): boolean => wrongPitch(c) && c.pitch.mean < c.target;
/** The usual band is a guess: what it stands counts only for a cut that runs over its prediction. */
const bandKnown = (c: CutSigns): boolean => said(c, "bandWidth") || c.load > s.highish.value;
const hollow = ({ section }: CutSigns): boolean => section.profile().kind.endsWith("hollow");
const bundle = ({ section }: CutSigns): boolean => section.profile().kind.startsWith("bundle");
const dryByRule = ({ group, material }: CutSigns): boolean =>
  group === undefined || group.dry || material.family === "magnesium";
const hazard = ({ material }: CutSigns, key: string): boolean => material.hazards.includes(key);
const named = ({ group }: CutSigns, ...names: readonly string[]): boolean => names.includes(group?.name ?? "");
const hardens = (c: CutSigns): boolean => hazard(c, "hardens") || (c.group !== undefined && workHardens(c.group));
const lateRate = (c: CutSigns): number => c.low / slack;
const fastest = k.fastBand.value * slack;

const thin = "{thinTeeth} teeth in the thinnest part";
const against = "{pitch} where {best} suits";
const load = "{load} times the usual feed";
const heavy = "{heavy} times what the metal takes";
const gullets = "gullets filled {fill} times";
const speed = "{speedTimes} times the speed wanted";
const push = "push {push} of what the band stands";
const gap = "guide gap {guideGap}";
const tension = "tension {tension}";
const motor = "{motor} of the motor used";
const late = "{minutes} against {minutesLow} to {minutesHigh}";

/** The conditions of data/symptoms by name. A number that is not known holds none. */
export const signConditions: Readonly<Record<string, Condition>> = {
  belowOneTooth: [(c) => c.thinTeeth < k.ruleSlack.value, thin],
  belowTwoTeeth: [(c) => c.thinTeeth >= k.ruleSlack.value && c.thinTeeth < lawful, thin],
  twoToThreeTeeth: [(c) => c.thinTeeth >= lawful && c.thinTeeth < s.threeTeeth.value, thin],
  manyInThin: [(c) => c.thinTeeth >= s.manyTeeth.value, thin],
  fewInCut: [(c) => c.teeth < s.manyTeeth.value, "{teeth} teeth in the cut"],
  tooFine: [tooFine, against],
  tooCoarse: [(c) => wrongPitch(c) && c.pitch.mean > c.target, against],
  pitchRight: [(c) => c.factor >= s.rightPitch.value, "pitch right"],
  straightPitch: [(c) => c.pitch.coarse === c.pitch.fine, "straight pitch"],
  feedLow: [(c) => c.load * slack * c.spread < 1, load],
  feedLowish: [(c) => c.load * slack * c.spread >= 1 && c.load < s.lowish.value, load],
  feedHigh: [(c) => c.heavy > slack * c.spread, heavy],
  feedHighish: [(c) => c.heavy > s.highish.value && c.heavy <= slack * c.spread, heavy],
  chipBelowEdge: [(c) => c.chip < k.thinChip.value && !tooFine(c), "chip {chip}"],
  rubsHardening: [(c) => c.load < s.lowish.value && hardens(c), `${load}, in a metal that hardens`],
  gulletsFull: [(c) => c.gulletFill > k.overfull.value * slack, gullets],
  gulletsNearFull: [(c) => c.gulletFill > s.nearFull.value && c.gulletFill <= k.overfull.value * slack, gullets],
  gulletsRoomy: [(c) => c.gulletFill < s.roomy.value, gullets],
  tooFast: [(c) => c.speed > fastest, speed],
  fastish: [(c) => c.speed > s.fastish.value && c.speed <= fastest, speed],
  tooSlowBand: [(c) => c.speed * slack < k.slowBand.value, speed],
  slowish: [(c) => c.speed * slack >= k.slowBand.value && c.speed < s.slowish.value, speed],
  pushOver: [(c) => c.push > 1 && bandKnown(c), push],
  pushHard: [(c) => c.push > s.hardPush.value && c.push <= 1 && bandKnown(c), push],
  pushLight: [(c) => c.push < s.lightPush.value, push],
  guidesFar: [(c) => said(c, "guideGap") && c.guides > s.farGuides.value, gap],
  guidesVeryFar: [(c) => said(c, "guideGap") && c.guides > s.veryFarGuides.value, gap],
  guidesClose: [(c) => said(c, "guideGap") && c.guides <= s.closeGuides.value, gap],
  tensionLow: [(c) => said(c, "bandTension") && c.shop.bandTension < s.lowTension.value, tension],
  tensionHigh: [(c) => said(c, "bandTension") && c.shop.bandTension > s.highTension.value, tension],
  tensionUsual: [
    (c) =>
      said(c, "bandTension") &&
      c.shop.bandTension >= s.usualTensionFrom.value &&
      c.shop.bandTension <= s.usualTensionTo.value,
    tension,
  ],
  bandThick: [(c) => said(c, "bandThickness") && c.thick > s.thickBand.value, "band {thickness} thick"],
  bandNarrow: [(c) => said(c, "bandWidth") && c.wide < s.narrowBand.value, "band {width} wide"],
  motorFull: [(c) => c.motor > s.fullMotor.value, motor],
  motorBusy: [(c) => c.motor > s.busyMotor.value && c.motor <= s.fullMotor.value, motor],
  motorEasy: [(c) => c.motor < s.easyMotor.value, motor],
  late: [(c) => c.rate < lateRate(c), late],
  onTime: [(c) => c.rate >= lateRate(c), late],
  hardens: [hardens, "the metal work-hardens"],
  gummy: [
    (c) => hazard(c, "gummy") || named(c, "aluminium", "copper and bronze", "pure titanium"),
    "the metal is gummy",
  ],
  shortChips: [(c) => (c.group?.chipVolume ?? Infinity) <= s.shortChips.value, "short chips by nature"],
  hard: [(c) => c.hardness > s.hard.value, "{hardness} times the hardness usual in its group"],
  abrasive: [(c) => hazard(c, "abrasive") || named(c, "grey iron", "ductile iron"), "the metal is abrasive"],
  hardCase: [(c) => hazard(c, "case"), "hard case"],
  hollow: [hollow, "hollow work"],
  bundle: [bundle, "a bundle"],
  varying: [(c) => c.varying > s.varying.value, "widest contact {varying} times the mean"],
  wide: [({ section }) => section.profile().maximumExtent > s.wide.value, "work {extent} wide"],
  constantFeed: [({ shop }) => shop.feedMode === "constant feed", "constant feed"],
  cutDry: [(c) => c.shop.coolant === "dry" && !dryByRule(c), "cut dry"],
  cutMist: [(c) => c.shop.coolant === "mist" && !dryByRule(c), "cut with mist"],
  flood: [(c) => (c.shop.coolant ?? (dryByRule(c) ? "dry" : "flood")) === "flood", "flood coolant"],
  wornSaw: [({ shop }) => shop.sawCondition === "worn", "worn saw"],
  newBlade: [({ trouble }) => trouble.blade === "new", "new blade"],
  oldBlade: [({ trouble }) => trouble.blade === "old", "old blade"],
  carbide: [({ blade }) => blade === "carbide", "carbide"],
  carbideInterrupted: [(c) => c.blade === "carbide" && (hollow(c) || bundle(c)), "carbide in an interrupted cut"],
  bimetalTooHard: [(c) => c.blade === "bi-metal" && c.hardness > s.tooHard.value, "too hard for bi-metal"],
  normalHeat: [
    (c) => c.blade === "carbide" && c.speed <= fastest && (c.group?.letter === "P" || c.group?.letter === "K"),
    "carbide at its own speed",
  ],
};

/** The numbers of the shop block without which a condition cannot be judged. */
export const conditionNeeds: Readonly<Record<string, string>> = {
  guidesFar: "Guide gap",
  guidesVeryFar: "Guide gap",
  guidesClose: "Guide gap",
  tensionLow: "Band tension",
  tensionHigh: "Band tension",
  tensionUsual: "Band tension",
  bandThick: "Band thickness",
  bandNarrow: "Band width",
  motorFull: "Motor power",
  motorBusy: "Motor power",
  motorEasy: "Motor power",
};
