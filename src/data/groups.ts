import type { Mark } from "./constant";

/**
 * The cutting groups: what sets band speed and bite. One group in three lines, in core units.
 *
 * Columns: name, ISO 513 letter as shops sort it (all stainless under M), kc1.1 [N/mm²], mc, chip volume ratio R, hardness
 * above which the speed is taken back [HB], bulky (one step coarser) or dry (cut dry as a rule), basis of the force
 * constants (keys of forceBasis) and of the hardness (keys of hardnessBasis). Then bi-metal (none in hardened steel), then
 * carbide: band speed at a mean width of 4 in [mm/min], bite [mm² per mm of band travel], spread of the rate ×/÷, mark and
 * basis of the speed, mark and basis of the bite.
 */
// prettier-ignore
const groupRows = [
  ["low-carbon steel", "P", 1780, 0.17, 5, 180, "", "t", "d",
    [82000, 0.079, 1.7, "read", "Machinery's Handbook, 31st ed., p. 1245: A36 shapes", "derived", "running-in rate of a small saw's manual, 30-35 cm²/min on steel of 410-510 N/mm² (read), at half the feed (common practice)"],
    [130000, 0.16, 1.8, "judgement", "carbide turning speeds carried over", "derived", "calibrated on a German vocational tables book, 170-220 cm²/min (read)"]],
  ["medium-carbon steel", "P", 2000, 0.2, 5, 240, "", "j", "d",
    [65000, 0.079, 1.7, "read", "Machinery's Handbook, 31st ed., p. 1245: the middle of nine grades", "derived", "as low-carbon steel: a German vocational tables book prints structural and carbon steel in one row (read)"],
    [115000, 0.16, 1.8, "judgement", "carbide turning speeds carried over", "derived", "calibrated on a German vocational tables book, 170-220 cm²/min (read)"]],
  ["alloy steel", "P", 2300, 0.25, 5, 260, "", "j", "d",
    [67000, 0.067, 1.7, "read", "Machinery's Handbook, 31st ed., p. 1245: the middle of nine grades", "derived", "0.85 of low-carbon steel: a German vocational tables book prints 130-180 against 170-220 cm²/min (read), less the ratio of the speeds"],
    [105000, 0.137, 1.8, "judgement", "carbide turning speeds carried over", "derived", "calibrated on a German vocational tables book, 130-180 cm²/min (read)"]],
  ["heat-treated alloy steel", "P", 2400, 0.25, 5, 325, "", "j", "r",
    [46000, 0.052, 1.8, "read", "Machinery's Handbook, 31st ed., p. 1245: 250 ft/min × 0.60 at 325 HB", "judgement", "between alloy and tool steel"],
    [85000, 0.148, 2, "judgement", "carbide turning speeds carried over", "derived", "calibrated on a German vocational tables book, 80-180 cm²/min (read)"]],
  ["tool steel W O A S H L", "P", 2000, 0.23, 5, 260, "", "u", "d",
    [58000, 0.041, 1.6, "read", "Machinery's Handbook, 31st ed., p. 1245: the middle of eight grades", "derived", "calibrated on the operating manual of a 550 mm horizontal band saw, standard cutting chart, sec. 7.3 (read)"],
    [85000, 0.09, 2.2, "judgement", "carbide turning speeds carried over", "judgement", "no published figure was found"]],
  ["tool steel D M T", "P", 2200, 0.23, 5, 280, "", "u", "j",
    [29000, 0.057, 1.6, "read", "Machinery's Handbook, 31st ed., p. 1245: the middle of five grades", "derived", "calibrated on the operating manual of a 550 mm horizontal band saw, standard cutting chart, sec. 7.3 (read)"],
    [62000, 0.085, 2.2, "judgement", "carbide turning speeds carried over", "judgement", "no published figure was found"]],
  ["ferritic and martensitic stainless", "M", 1600, 0.21, 6, 230, "", "u", "j",
    [30000, 0.055, 1.6, "derived", "operating manual of a 550 mm horizontal band saw, standard cutting chart, sec. 7.3 (read), × 1.17", "derived", "calibrated on the operating manual of a 550 mm horizontal band saw, standard cutting chart, sec. 7.3 (read)"],
    [85000, 0.132, 1.8, "judgement", "carbide turning speeds carried over", "derived", "calibrated on a German vocational tables book, 80-120 cm²/min (read)"]],
  ["austenitic stainless", "M", 1800, 0.2, 7, 230, "", "u", "j",
    [34000, 0.046, 1.6, "read", "Machinery's Handbook, 31st ed., p. 1245: 304 as its example", "derived", "calibrated on the operating manual of a 550 mm horizontal band saw, standard cutting chart, sec. 7.3 (read)"],
    [75000, 0.131, 1.8, "judgement", "carbide turning speeds carried over", "derived", "calibrated on a German vocational tables book, 80-120 cm²/min (read)"]],
  ["duplex and PH stainless", "M", 2000, 0.21, 6, 365, "", "u", "j",
    [30000, 0.051, 1.8, "judgement", "carried over from high-speed-steel turning speeds, from memory", "derived", "calibrated on a trade figure: a 7 in round of 17-4PH at 2 to 2.5 in²/min (common practice, no source)"],
    [68000, 0.096, 2, "judgement", "carbide turning speeds carried over", "derived", "calibrated on a trade figure: a 7 in round of 17-4PH at 8 to 11 in²/min (common practice, no source)"]],
  ["grey iron", "K", 1150, 0.25, 3, 220, "dry", "j", "d",
    [45000, 0.079, 2, "memory", "of band-sawing speeds for cast iron", "judgement", "as low-carbon steel"],
    [80000, 0.13, 1.8, "judgement", "carbide turning speeds carried over", "derived", "calibrated on a German vocational tables book, 80-120 cm²/min (read)"]],
  ["ductile iron", "K", 1300, 0.27, 4, 260, "", "j", "d",
    [40000, 0.065, 2, "judgement", "a little under grey iron", "judgement", "between grey iron and alloy steel"],
    [75000, 0.139, 1.8, "judgement", "carbide turning speeds carried over", "derived", "calibrated on a German vocational tables book, 80-120 cm²/min (read)"]],
  ["aluminium", "N", 650, 0.25, 7, 150, "bulky", "u", "j",
    [200000, 0.207, 2, "judgement", "between general and plate saws", "judgement", "on a general saw, 120 m/min, inside the 230-280 cm²/min of a German vocational tables book (read)"],
    [800000, 0.207, 2.2, "judgement", "carbide turning speeds carried over", "judgement", "the bi-metal bite: no evidence for more"]],
  ["brass", "N", 750, 0.22, 3, 150, "", "j", "j",
    [85000, 0.119, 2, "judgement", "between a trade magazine (bronze 180 ft/min at 4 in, read) and a small saw's dry figures (bronze and hard brass 250, copper 315 ft/min, read)", "judgement", "between copper and aluminium"],
    [200000, 0.128, 2, "judgement", "carbide turning speeds carried over", "derived", "calibrated on a German vocational tables book, 130-180 cm²/min (read), at the 120 m/min of a general saw"]],
  ["copper and bronze", "N", 1500, 0.22, 7, 180, "", "u", "j",
    [71000, 0.079, 2, "judgement", "between a trade magazine (bronze 180 ft/min at 4 in, read) and a small saw's dry figures (bronze and hard brass 250, copper 315 ft/min, read)", "judgement", "as low-carbon steel"],
    [150000, 0.11, 2.2, "judgement", "carbide turning speeds carried over", "judgement", "no published figure was found"]],
  ["aluminium bronze", "N", 1600, 0.22, 5, 420, "", "u", "j",
    [50000, 0.05, 2.2, "judgement", "two sources that were read differ by a factor of 3", "judgement", "between copper and duplex stainless"],
    [90000, 0.075, 2.2, "judgement", "carbide turning speeds carried over", "judgement", "no published figure was found"]],
  ["iron-base heat-resisting", "S", 2000, 0.24, 7, 363, "", "u", "j",
    [20000, 0.035, 2.2, "judgement", "between stainless and nickel", "judgement", "between stainless and nickel"],
    [40000, 0.06, 2.2, "judgement", "carbide turning speeds carried over", "judgement", "no published figure was found"]],
  ["nickel and cobalt alloys", "S", 2500, 0.24, 7, 450, "", "u", "j",
    [15000, 0.029, 2.2, "memory", "15 to 18 m/min", "judgement", "the least of all groups: it work-hardens"],
    [26000, 0.05, 2.2, "judgement", "carbide turning speeds carried over", "judgement", "no published figure was found"]],
  ["pure titanium", "S", 1300, 0.23, 6, 200, "", "u", "j",
    [24400, 0.05, 2.2, "read", "Machinery's Handbook, 31st ed., p. 1245: commercially pure titanium", "judgement", "as austenitic stainless"],
    [60000, 0.08, 2.2, "judgement", "carbide turning speeds carried over", "judgement", "no published figure was found"]],
  ["titanium alloys", "S", 1600, 0.22, 6, 370, "", "u", "j",
    [21300, 0.04, 2.2, "read", "Machinery's Handbook, 31st ed., p. 1245: Ti-6Al-4V", "judgement", "between pure titanium and nickel"],
    [50000, 0.07, 2.2, "judgement", "carbide turning speeds carried over", "judgement", "no published figure was found"]],
  ["hardened steel to 55 HRC", "H", 4600, 0.25, 4, 560, "", "h", "d",
    undefined,
    [40000, 0.048, 2.2, "judgement", "carbide turning speeds carried over", "judgement", "no published figure was found"]],
  ["hardened steel over 55 HRC", "H", 4700, 0.25, 4, 700, "", "h", "j",
    undefined,
    [25000, 0.034, 2.2, "judgement", "carbide turning speeds carried over", "judgement", "no published figure was found"]],
] as const;

export type GroupName = (typeof groupRows)[number][0];

/** Where a value comes from: its mark, and the source or the reason. */
export interface Basis {
  readonly mark: Mark;
  readonly text: string;
}

/** Band speed [mm/min] at a mean width of 4 in, and bite: area cut per length of band travel [mm], of one class of band. */
export interface BladeRow {
  readonly speed: number;
  readonly bite: number;
  /** The rate's low and high are ÷ and × this [-]. */
  readonly spread: number;
  readonly basis: { readonly speed: Basis; readonly bite: Basis; readonly spread: string };
}

export interface Group {
  readonly name: GroupName;
  /** What the shop block may call it: the same for both groups of tool steel. */
  readonly label: string;
  /** ISO 513 letter as shops sort it. */
  readonly letter: string;
  /** Specific cutting force at a chip of 1 mm × 1 mm [N/mm²] and its exponent: kc = kc1.1 · h^−mc. */
  readonly kc11: number;
  readonly mc: number;
  /** Room that chips take against the metal they were cut from, R. */
  readonly chipVolume: number;
  /** Hardness above which the speed is taken back [HB]. */
  readonly maximumHardness: number;
  /** Chips fill the gullets: cut one step coarser. */
  readonly bulky: boolean;
  /** Cut without coolant as a rule. */
  readonly dry: boolean;
  readonly blades: { readonly "bi-metal": BladeRow | undefined; readonly carbide: BladeRow };
  /** Where the other values come from, in words with their mark. */
  readonly basis: { readonly force: string; readonly hardness: string; readonly ratio: string };
}

// prettier-ignore
const forceBasis = {
  t: "from memory: textbook value of S235; a published table of kc against feed (clamping-force norm RN 1391) agrees within 4 %",
  j: "judgement: interpolated between published turning values of neighbouring classes, ±30 %",
  u: "derived: set so that the power at a chip of 0.305 mm lies near the unit power of Machinery's Handbook (from memory; 85 % of the motor at the tool)",
  h: "published turning value of the material class (VDI 3323 kind), second-hand; exponent: judgement",
} as const;
// prettier-ignore
const hardnessBasis = {
  d: "derived: upper end of the hardness range that names the group",
  r: "read: the hardness at which Machinery's Handbook, 31st ed., p. 1245, gives the speed",
  j: "judgement: from the hardness of the materials in the group",
} as const;
const ratioBasis =
  "from memory: after broach chip-space factors (3 short chips, 5 steel, 6 to 7 gummy or tough); range 3 to 8";

/** Why a spread is what it is, by its value. Rows for which no published rate was found begin at 2. */
// prettier-ignore
const spreadBasis: ReadonlyMap<number, string> = new Map([
  [1.6, "derived and judgement: the 26 rows of the cutting chart that the group is calibrated on scatter by 1.24; whole-number ranges and saws that differ make it 1.6 for about 80 %"],
  [1.7, "judgement: the speed is read, the bite comes from one running-in figure and a tables book"],
  [1.8, "judgement: one published row stands behind it"],
  [2, "judgement: no published rate was found, or a trade figure only"],
  [2.2, "judgement throughout: no published rate was found"],
]);

type BladeColumns = readonly [number, number, number, Mark, string, Mark, string];

function bladeRow([speed, bite, spread, speedMark, speedText, biteMark, biteText]: BladeColumns): BladeRow {
  return {
    speed,
    bite,
    spread,
    basis: {
      speed: { mark: speedMark, text: speedText },
      bite: { mark: biteMark, text: biteText },
      spread: spreadBasis.get(spread)!,
    },
  };
}

// prettier-ignore
export const groups: readonly Group[] = groupRows.map(([name, letter, kc11, mc, chipVolume, maximumHardness, flag, force, hardness, biMetal, carbide]) => ({
  name,
  label: name.startsWith("tool steel") ? "tool steel" : name,
  letter,
  kc11,
  mc,
  chipVolume,
  maximumHardness,
  bulky: flag === "bulky",
  dry: flag === "dry",
  blades: { "bi-metal": biMetal && bladeRow(biMetal), carbide: bladeRow(carbide) },
  basis: { force: forceBasis[force], hardness: hardnessBasis[hardness], ratio: ratioBasis },
}));
