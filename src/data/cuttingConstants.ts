import { constant, type Constant, type Mark } from "./constant";

/** The constants of the cutting model. */
// prettier-ignore
export const cuttingConstants = {
  touchingGap: constant(0.5, "mm", "judgement", "single contacts less than this apart count as one: bars that touch are one"),
  thinnestWay: constant(0.2, "-", "judgement", "share of the way over which single contacts are shorter than the thinnest lasting one"),
  fewestTeeth: constant(2, "teeth", "read", "two teeth in the thinnest lasting part, US Navy training manual on machine tools"),
  finestTeeth: constant(0.75, "teeth", "judgement", "least part of a tooth in a wall at the finest pitch made"),
  ruleSlack: constant(0.98, "-", "judgement", "2 % slack on the tooth rules and on every comparison of CUTCHECK"),
  bulkyPitch: constant(1.4, "-", "common practice", "aluminium and magnesium are cut one step coarser: at the handbook's pitch their chips fill the gullets (derived)"),
  fullTeeth: constant(6, "teeth", "judgement", "teeth in contact that the bite of the group needs; with fewer it falls in proportion"),
  gulletArea: constant(0.25, "pitch²", "memory", "gullet depth 0.4-0.45 pitch, half of it open; range 0.2-0.35"),
  gulletFill: constant(0.7, "-", "common practice", "share of the gullet that may fill with chips; range 0.5-0.8"),
  hollowBite: constant(0.75, "-", "common practice", "interrupted cut: tube, box, open rolled shape"),
  solidBundleBite: constant(0.8, "-", "common practice", "bundle of solids"),
  hollowBundleBite: constant(0.65, "-", "common practice", "bundle of hollow sections"),
  wornBite: constant(0.7, "-", "common practice", "old, light or loose saw, range 0.6-0.8"),
  carbideShare: constant(0.5, "-", "judgement", "exponent of a grade's own speed and bite, against its group's, for carbide"),
  hardnessSpeed: constant(1.4, "-", "derived", "exponent of hardness on speed above the group's: 0.60 at 325 HB against 225 HB, Machinery's Handbook, 31st ed., p. 1245 (read)"),
  hardnessLeast: constant(0.5, "-", "judgement", "lower end of that factor"),
  drySpeed: constant(0.6, "-", "read", "no coolant: reduce the speed by 30 to 50 %, Machinery's Handbook, 31st ed., p. 1245; grey iron and magnesium are cut dry as a rule: 1 (common practice)"),
  mistSpeed: constant(0.8, "-", "common practice", "mist, range 0.75-0.9"),
  wornSpeed: constant(0.85, "-", "common practice", "old, light or loose saw, range 0.8-0.9"),
  generalTopSpeed: constant(120_000, "mm/min", "common practice", "top band speed of a general saw; holds for non-ferrous metals when no saw is described"),
  tooFast: constant(1.5, "-", "judgement", "a saw whose slowest speed is above this times the one wanted is refused"),
  motorSpeed: constant(10_000, "mm/min", "judgement", "a weak motor slows the band to this at most, or to motorShare of the speed wanted; then the chip is thinned"),
  motorShare: constant(0.2, "-", "judgement", "see motorSpeed"),
  set: constant(2, "teeth", "derived", "teeth that share the kerf: local chip = 2 × mean chip; range 1.5-3"),
  leastLawChip: constant(0.005, "mm", "judgement", "below this local chip the specific cutting force is held: it was fitted at 0.1 mm and more"),
  sawFactor: constant(1.15, "-", "read", "factor of sawing on the specific cutting force, German vocational tables book, sawing page"),
  wearFactor: constant(1.3, "-", "read", "factor of wear on the specific cutting force, same page; 1.3 new to 1.5 worn"),
  feedShare: constant(0.8, "-", "memory", "feed force per cutting force, sharp teeth 0.5-0.8, worn 1-1.5"),
  bucklingShare: constant(0.5, "-", "judgement", "share of the band's buckling load that is used"),
  mostOf: constant(0.5, "-", "judgement", "a limit that holds over more than this share of the cut holds the cut"),
  worthSaying: constant(0.2, "-", "judgement", "share of the time from which a second limit is said"),
  rectangleInertia: constant(12, "-", "derived", "second moment of area of a rectangle: width·thickness³/12; polar radius² (width² + thickness²)/12"),
  rectangleTorsion: constant(3, "-", "derived", "torsion constant of a thin rectangle: width·thickness³/3·(1 − 0.63·thickness/width)"),
  torsionEnds: constant(0.63, "-", "memory", "end correction of that torsion constant, Timoshenko, Strength of Materials"),
  poisson: constant(0.3, "-", "memory", "steel; shear modulus = modulus / (2·(1 + this))"),
  bandEdges: constant(4, "-", "derived", "load at mid span of a strip that tips sideways: 4·moment/(span·(1 − extent/(2·span)))"),
  usualWidthSlack: constant(2, "mm", "judgement", "a band this much narrower than a usual one takes its thickness"),
  usualThicknessSlack: constant(0.05, "mm", "judgement", "a band this near a usual thickness takes its kerf"),
  modulus: constant(206_000, "N/mm²", "memory", "steel, Young's modulus"),
  idleShare: constant(0.15, "-", "judgement", "idle power = 150 W + 0.15 of the motor, at most 0.35 of it"),
  idleBase: constant(150, "W", "judgement", "see idleShare"),
  idleMost: constant(0.35, "-", "judgement", "see idleShare"),
  unknownIdle: constant(300, "W", "memory", "idle power added to the motor a cut needs when no saw is described, 0.3-1 kW"),
  kerfPerThickness: constant(1.54, "-", "common practice", "kerf = 1.5-1.6 × band thickness: 0.9 to 1.4, 1.1 to 1.65, 1.3 to 2, 1.6 to 2.5 mm"),
  forceChip: constant(0.001, "mm", "judgement", "mean chip under which a cut that the feed force holds over half of its area is refused"),
  forceLow: constant(1.6, "-", "judgement", "specific cutting force at the low end of the rate, ×"),
  forceHigh: constant(1.4, "-", "judgement", "specific cutting force at the high end, ÷"),
  feedShareLow: constant(1.25, "-", "judgement", "feed force share at the low end, ×"),
  feedShareHigh: constant(1.2, "-", "judgement", "feed force share at the high end, ÷"),
  leastSpread: constant(1.15, "-", "judgement", "on a saw that is described low and high are never nearer to the nominal rate, ×/÷"),
  unpublishedSpread: constant(2, "-", "judgement", "from this spread on no published rate was found for the group and class of blade"),
  thinChip: constant(0.0015, "mm", "derived", "mean chip under which it is said to be thin: published rates of tool and stainless steels give 1.9-3.6 µm"),
  overfull: constant(1.25, "-", "judgement", "CUTCHECK: gullet fill from which a coarser pitch comes first"),
  fastBand: constant(1.3, "-", "judgement", "CUTCHECK: band speed against the group's from which it is too fast"),
  slowBand: constant(0.7, "-", "judgement", "CUTCHECK: band speed against the one advised under which it is too slow"),
  saidDigits: constant(3, "digits", "judgement", "significant digits of the figures in verdicts"),
  wrongPitch: constant(0.75, "-", "judgement", "CUTCHECK: pitch factor under which another pitch comes first"),
} as const satisfies Record<string, Constant>;

/** A point of a line over the mean width of the work [in], with its mark. */
interface WidthPoint<T> {
  readonly width: number;
  readonly value: T;
  readonly mark: Mark;
}

const handbook = "read";

/** Pitch that suits a mean width; straight in the logarithm of the width. The first line goes on below, above the last it stays. Read: Machinery's Handbook, 31st ed., p. 1245. */
// prettier-ignore
export const pitchPoints: readonly WidthPoint<string>[] = [
  { width: 0.25, value: "10/14", mark: handbook },
  { width: 0.75, value: "6/10", mark: handbook },
  { width: 1.25, value: "4/6", mark: handbook },
  { width: 2.5, value: "4/6", mark: "common practice" },
  { width: 4, value: "3/4", mark: handbook },
  { width: 8, value: "2/3", mark: handbook },
  { width: 24, value: "0.75/1.25", mark: "judgement" },
];

/** Factor of the mean width on the band speed; straight in the logarithm of the width, flat outside. Read: the same page. */
// prettier-ignore
export const speedPoints: readonly WidthPoint<number>[] = [
  { width: 0.25, value: 1.15, mark: handbook },
  { width: 0.75, value: 1.12, mark: handbook },
  { width: 1.25, value: 1.1, mark: handbook },
  { width: 4, value: 1, mark: handbook },
  { width: 8, value: 0.88, mark: handbook },
  { width: 24, value: 0.7, mark: "judgement" },
];

/** The band that a saw for this width of work usually runs; width × thickness, kerf [mm]. Judgement; kerfs common practice. */
// prettier-ignore
export const usualBands: readonly { readonly upTo: number; readonly width: number; readonly thickness: number; readonly kerf: number }[] = [
  { upTo: 180, width: 27, thickness: 0.9, kerf: 1.4 },
  { upTo: 260, width: 34, thickness: 1.1, kerf: 1.65 },
  { upTo: 420, width: 41, thickness: 1.3, kerf: 2 },
  { upTo: 650, width: 54, thickness: 1.6, kerf: 2.5 },
  { upTo: Infinity, width: 67, thickness: 1.6, kerf: 2.5 },
];

/** Pitches that bands are usually made in, fine to coarse. Common practice, no source; finer carbide is taken when it is typed. */
// prettier-ignore
export const madePitches: Readonly<Record<"bi-metal" | "carbide", readonly string[]>> = {
  "bi-metal": ["14/18", "10/14", "8/12", "6/10", "5/8", "4/6", "3/4", "2/3", "1.4/2", "1.1/1.6", "0.75/1.25"],
  carbide: ["4/6", "3/4", "2/3", "1.4/2", "1.1/1.6", "0.75/1.25"],
};
