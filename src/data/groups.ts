/**
 * The cutting groups: what sets band speed and chip thickness. One row per group, in core units.
 *
 * Columns: name, ISO 513 letter as shops sort it (all stainless under M), kc1.1 [N/mm²], mc, chip volume ratio R,
 * hardness above which speed and chip are taken back [HB], bi-metal and carbide bands as least, nominal and greatest band
 * speed [mm/min] and the same of the chip thickness [mm] (no bi-metal in hardened steel), basis of the force constants
 * (keys of forceBasis) and of the hardness (keys of hardnessBasis).
 */
// prettier-ignore
const groupRows = [
  ["low-carbon steel", "P", 1780, 0.17, 5, 180, [60000, 80000, 100000, 0.005, 0.008, 0.013], [100000, 130000, 170000, 0.007, 0.011, 0.017], "t", "d"],
  ["medium-carbon steel", "P", 2000, 0.2, 5, 240, [50000, 65000, 85000, 0.004, 0.007, 0.011], [90000, 115000, 150000, 0.006, 0.01, 0.015], "j", "d"],
  ["alloy steel", "P", 2300, 0.25, 5, 260, [40000, 55000, 75000, 0.004, 0.006, 0.01], [80000, 105000, 135000, 0.006, 0.009, 0.014], "j", "d"],
  ["heat-treated alloy steel", "P", 2400, 0.25, 5, 350, [30000, 42000, 55000, 0.003, 0.0045, 0.0075], [65000, 85000, 115000, 0.005, 0.0075, 0.012], "j", "d"],
  ["tool steel", "P", 2450, 0.23, 5, 260, [22000, 35000, 50000, 0.0025, 0.0045, 0.0075], [55000, 75000, 105000, 0.0045, 0.007, 0.011], "v", "d"],
  ["ferritic and martensitic stainless", "M", 1875, 0.21, 6, 230, [30000, 42000, 60000, 0.003, 0.005, 0.008], [60000, 85000, 115000, 0.005, 0.008, 0.012], "v", "j"],
  ["austenitic stainless", "M", 2150, 0.2, 7, 230, [22000, 33000, 45000, 0.003, 0.005, 0.008], [55000, 75000, 100000, 0.005, 0.008, 0.012], "v", "j"],
  ["duplex and PH stainless", "M", 2150, 0.21, 6, 365, [20000, 30000, 40000, 0.0025, 0.0035, 0.006], [50000, 68000, 90000, 0.005, 0.0075, 0.011], "j", "j"],
  ["grey iron", "K", 1150, 0.25, 3, 220, [35000, 50000, 70000, 0.005, 0.008, 0.014], [60000, 80000, 110000, 0.006, 0.01, 0.016], "j", "d"],
  ["ductile iron", "K", 1300, 0.27, 4, 260, [30000, 42000, 60000, 0.004, 0.0065, 0.011], [55000, 75000, 100000, 0.005, 0.0085, 0.013], "j", "d"],
  ["aluminium", "N", 750, 0.25, 7, 150, [90000, 200000, 600000, 0.008, 0.015, 0.03], [200000, 800000, 2500000, 0.012, 0.025, 0.045], "j", "j"],
  ["brass", "N", 750, 0.22, 3, 150, [80000, 120000, 200000, 0.006, 0.012, 0.022], [120000, 200000, 400000, 0.01, 0.016, 0.028], "j", "j"],
  ["copper and bronze", "N", 1000, 0.22, 7, 180, [50000, 80000, 130000, 0.005, 0.008, 0.015], [90000, 150000, 300000, 0.007, 0.012, 0.02], "j", "j"],
  ["aluminium bronze", "N", 1300, 0.22, 5, 420, [25000, 40000, 65000, 0.003, 0.005, 0.009], [60000, 90000, 150000, 0.005, 0.008, 0.013], "j", "j"],
  ["iron-base heat-resisting", "S", 2600, 0.24, 7, 363, [14000, 20000, 28000, 0.0025, 0.0035, 0.0055], [25000, 40000, 55000, 0.004, 0.006, 0.009], "v", "j"],
  ["nickel and cobalt alloys", "S", 3300, 0.24, 7, 450, [8000, 13000, 20000, 0.0015, 0.003, 0.005], [16000, 26000, 40000, 0.003, 0.005, 0.008], "v", "j"],
  ["pure titanium", "S", 1700, 0.23, 6, 200, [20000, 30000, 45000, 0.003, 0.005, 0.008], [45000, 65000, 90000, 0.005, 0.008, 0.012], "v", "j"],
  ["titanium alloys", "S", 2110, 0.22, 6, 370, [14000, 20000, 30000, 0.0025, 0.004, 0.0065], [35000, 50000, 70000, 0.004, 0.007, 0.01], "v", "j"],
  ["hardened steel to 55 HRC", "H", 4600, 0.25, 4, 560, undefined, [25000, 40000, 60000, 0.002, 0.0035, 0.0055], "h", "d"],
  ["hardened steel over 55 HRC", "H", 4700, 0.25, 4, 700, undefined, [15000, 25000, 40000, 0.0015, 0.0025, 0.004], "h", "j"],] as const;

export type GroupName = (typeof groupRows)[number][0];

/** Least, nominal and greatest of one value. */
export interface Spread {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

/** Band speed [mm/min] and mean chip thickness per tooth [mm] of one class of band. */
export interface BladeRow {
  readonly speed: Spread;
  readonly chip: Spread;
}

export interface Group {
  readonly name: GroupName;
  /** ISO 513 letter as shops sort it. */
  readonly letter: string;
  /** Specific cutting force at a chip of 1 mm × 1 mm [N/mm²] and its exponent: kc = kc1.1 · h^−mc. */
  readonly kc11: number;
  readonly mc: number;
  /** Room that chips take against the metal they were cut from, R. */
  readonly chipVolume: number;
  /** Hardness above which speed and chip are taken back [HB]. */
  readonly maximumHardness: number;
  readonly blades: { readonly "bi-metal": BladeRow | undefined; readonly carbide: BladeRow };
  /** Where the values come from, in words with their mark. */
  readonly basis: { readonly force: string; readonly hardness: string; readonly ratio: string; readonly bands: string };
}

// prettier-ignore
const forceBasis = {
  t: "from memory: textbook value of S235; a published table of kc against feed (clamping-force norm RN 1391) agrees within 4 %",
  v: "published turning value of the ISO 513 material class (VDI 3323 kind), second-hand; ±25 % before it is carried to thin chips",
  j: "judgement: interpolated between published turning values of neighbouring classes, ±30 %",
  h: "published turning value of the material class (VDI 3323 kind), second-hand; exponent: judgement",
} as const;
// prettier-ignore
const hardnessBasis = {
  d: "derived: upper end of the hardness range that names the group",
  j: "judgement: from the hardness of the materials in the group",
} as const;
const ratioBasis =
  "from memory: after broach chip-space factors (3 short chips, 5 steel, 6 to 7 gummy or tough); range 3 to 8";
const bandsBasis =
  "derived, and from memory: high-speed steel turning speeds carried over, chip thickness between rubbing and tooth load, carbide tuned to area rates of a German tables book; no row is copied from a chart; speed ±30 %, chip ±40 %";
const calibrated =
  "; calibrated on one trade figure, common practice, no source: a 7 in round of precipitation-hardening stainless in about 18 min with bi-metal (2 to 2.5 in²/min), 8 to 11 in²/min with carbide, so that figure is no check of it";

type BandColumns = readonly [number, number, number, number, number, number];

function band([low, nominal, high, thin, usual, thick]: BandColumns): BladeRow {
  return { speed: { low, nominal, high }, chip: { low: thin, nominal: usual, high: thick } };
}

// prettier-ignore
export const groups: readonly Group[] = groupRows.map(([name, letter, kc11, mc, chipVolume, maximumHardness, biMetal, carbide, force, hardness]) => ({
  name,
  letter,
  kc11,
  mc,
  chipVolume,
  maximumHardness,
  blades: { "bi-metal": biMetal && band(biMetal), carbide: band(carbide) },
  basis: {
    force: forceBasis[force],
    hardness: hardnessBasis[hardness],
    ratio: ratioBasis,
    bands: name === "duplex and PH stainless" ? bandsBasis + calibrated : bandsBasis,
  },
}));
