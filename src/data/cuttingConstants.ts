import { constant, type Constant } from "./constant";

/** The constants of the cutting model. */
// prettier-ignore
export const cuttingConstants = {
  referenceTeeth: constant(13.78, "teeth", "derived", "teeth in 100 mm of contact at 3/4 teeth per inch, where the group table is stated"),
  crowdedTeeth: constant(24, "teeth", "judgement", "above this the chip thins by the square root of 24/teeth"),
  rubbingChip: constant(0.0025, "mm", "derived", "5 µm local chip over two teeth that share the kerf; edge radius 5-15 µm (band-sawing study, abstract read)"),
  set: constant(2, "teeth", "derived", "teeth that share the kerf: local chip = 2 × mean chip; range 1.5-3"),
  leastLawChip: constant(0.005, "mm", "judgement", "below this local chip the specific cutting force is held: it was fitted at 0.1 mm and more"),
  sawFactor: constant(1.15, "-", "read", "factor of sawing on the specific cutting force, German vocational tables book, sawing page"),
  wearFactor: constant(1.3, "-", "read", "factor of wear on the specific cutting force, same page; 1.3 new to 1.5 worn"),
  gulletArea: constant(0.25, "pitch²", "memory", "gullet depth 0.4-0.45 pitch, half of it open; range 0.2-0.35"),
  gulletFill: constant(0.7, "-", "common practice", "share of the gullet that may fill with chips; range 0.5-0.8"),
  feedShare: constant(0.8, "-", "memory", "feed force per cutting force, sharp teeth 0.5-0.8, worn 1-1.5"),
  bucklingShare: constant(0.5, "-", "judgement", "share of the band's buckling load that is used"),
  modulus: constant(206_000, "N/mm²", "memory", "steel, Young's modulus; shear modulus = this / 2.6"),
  widthExponent: constant(0.15, "-", "derived", "band speed falls with the mean width, (100/W)^0.15; low confidence, range 0.1-0.2"),
  widthLeast: constant(0.75, "-", "judgement", "lower end of the speed factor for width"),
  widthMost: constant(1.2, "-", "judgement", "upper end of the speed factor for width"),
  hardnessSpeed: constant(1.2, "-", "memory", "exponent of hardness on speed above the group's range; 1-1.7"),
  hardnessSpeedLeast: constant(0.6, "-", "judgement", "lower end of that factor"),
  hardnessChip: constant(0.5, "-", "judgement", "exponent of hardness on chip thickness above the group's range"),
  hardnessChipLeast: constant(0.75, "-", "judgement", "lower end of that factor"),
  hollowChip: constant(0.75, "-", "common practice", "interrupted cut: tube, box, rolled shape"),
  solidBundleChip: constant(0.8, "-", "common practice", "bundle of solids"),
  hollowBundleChip: constant(0.65, "-", "common practice", "bundle of hollow sections"),
  drySpeed: constant(0.7, "-", "memory", "no coolant: F. W. Taylor 1907, a heavy stream allows about 40 % more speed; range 0.5-0.8"),
  dryChip: constant(0.8, "-", "common practice", "no coolant"),
  mistSpeed: constant(0.8, "-", "common practice", "mist, range 0.75-0.9"),
  mistChip: constant(0.9, "-", "common practice", "mist"),
  wornSpeed: constant(0.85, "-", "common practice", "old, light or loose saw, range 0.8-0.9"),
  wornChip: constant(0.7, "-", "common practice", "old, light or loose saw, range 0.6-0.8"),
  leastFactors: constant(0.35, "-", "judgement", "coolant and condition together never take more than this leaves"),
  generalTopSpeed: constant(120_000, "mm/min", "common practice", "top band speed of a general saw; holds for non-ferrous metals when no saw is described"),
  plainChipShare: constant(0.5, "-", "judgement", "share of the nominal speed at which carbide takes no thicker chip than bi-metal in non-ferrous metals; straight from there to the nominal speed"),
  targetTeeth: constant(12, "teeth", "judgement", "teeth aimed at on a mean width of 80 mm, × (W/80)^0.2, from 8 to 14; range 6-24 in practice"),
  softTarget: constant(0.75, "-", "judgement", "fewer teeth aimed at in aluminium, brass, copper"),
  hardTarget: constant(1.2, "-", "judgement", "more teeth aimed at in heat-resisting alloys, titanium, hardened steel"),
  fewestTeeth: constant(2, "teeth", "read", "two teeth in the thinnest lasting part, US Navy training manual on machine tools"),
  fewestSolidTeeth: constant(3, "teeth", "read", "three-tooth rule, Machining Fundamentals (2014) p. 168"),
  fewestFinestTeeth: constant(0.75, "teeth", "judgement", "least part of a tooth in the wall at the finest pitch made"),
  ruleSlack: constant(0.98, "-", "judgement", "2 % slack on the tooth rules"),
  widePenalty: constant(0.75, "-", "judgement", "exponent of the penalty for a pitch too fine for the widest contact"),
  thinPenalty: constant(0.25, "-", "judgement", "exponent of the penalty for fewer than three teeth in the thinnest lasting part"),
  nearBest: constant(0.96, "-", "judgement", "pitches within 4 % of the best count as equal; the one nearest the tooth target is taken"),
  leastToothShare: constant(0.5, "-", "judgement", "lower end of the tooth-load factor, the root of teeth/3 in the thinnest part"),
  idleShare: constant(0.15, "-", "judgement", "idle power = 150 W + 0.15 of the motor, at most 0.35 of it"),
  idleBase: constant(150, "W", "judgement", "see idleShare"),
  idleMost: constant(0.35, "-", "judgement", "see idleShare"),
  unknownIdle: constant(300, "W", "memory", "idle power added to the motor a cut needs when no saw is described, 0.3-1 kW"),
  rateSpread: constant(1.6, "-", "judgement", "usual rate low and high, ×/÷"),
  forceLow: constant(1.6, "-", "judgement", "specific cutting force at the low end of the rate, ×"),
  forceHigh: constant(1.4, "-", "judgement", "specific cutting force at the high end, ÷"),
  feedShareLow: constant(1.25, "-", "judgement", "feed force share at the low end, ×"),
  feedShareHigh: constant(1.2, "-", "judgement", "feed force share at the high end, ÷"),
  toothLoadLow: constant(1.3, "-", "judgement", "greatest chip at the low end, ÷"),
  toothLoadHigh: constant(1.2, "-", "judgement", "greatest chip at the high end, ×"),
  chipVolumeLow: constant(1.45, "-", "judgement", "chip volume ratio at the low end, ×"),
  chipVolumeHigh: constant(1.25, "-", "judgement", "chip volume ratio at the high end, ÷"),
  leastSpread: constant(1.15, "-", "judgement", "low and high are never nearer to the nominal rate, ×/÷"),
  thinChipShare: constant(0.2, "-", "judgement", "share of the cut area with thin chips from which it is said"),
  forceChip: constant(0.001, "mm", "judgement", "mean chip under which a cut held back by feed force is refused"),
  kerfPerThickness: constant(1.54, "-", "common practice", "kerf = 1.5-1.6 × band thickness: 0.9 to 1.4, 1.1 to 1.65, 1.3 to 2, 1.6 to 2.5 mm"),
} as const satisfies Record<string, Constant>;

/** Chip factor by mean width [mm], straight lines in the logarithm of the width, flat outside; derived, low confidence. */
export const widthChip: readonly (readonly [number, number])[] = [
  [25, 0.8],
  [50, 0.9],
  [100, 1],
  [200, 1],
  [400, 0.9],
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

/** Pitches that bands are usually made in, fine to coarse. Common practice, no source; carbide from 3/4 up. */
// prettier-ignore
export const madePitches: Readonly<Record<"bi-metal" | "carbide", readonly string[]>> = {
  "bi-metal": ["14/18", "10/14", "8/12", "6/10", "5/8", "4/6", "3/4", "2/3", "1.4/2", "1.1/1.6", "0.75/1.25"],
  carbide: ["3/4", "2/3", "1.4/2", "1.1/1.6", "0.75/1.25"],
};
