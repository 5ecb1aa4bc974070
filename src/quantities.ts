/**
 * Each quantity once: what a number is, its core unit, how it is printed and converted in both unit systems, and the
 * range accepted as an input. Core units: mm, mm², mm²/min, mm/min, N, W, kg, min (N/mm² for stress).
 * Factors: 1 in = 25.4 mm, 1 lb = 0.45359237 kg (international yard and pound agreement, 1959); 1 lbf = lb × 9.80665 m/s²
 * (standard gravity, ISO 80000-3); 1 hp = 550 ft·lbf/s. Ranges are judgement: far wider than any saw, narrow enough to
 * catch a wrong unit or a date.
 */
export type Units = "inch" | "metric";

export interface Printed {
  /** core value = factor × printed number */
  readonly factor: number;
  readonly unit: string;
}

export interface QuantityRow {
  readonly inch: Printed;
  readonly metric: Printed;
  /** Greatest accepted input, in the core unit. */
  readonly most: number;
}

export const minutesPerHour = 60;

/** Millimetres of an inch (ISO 31-1). */
export const inch = 25.4;
/** Newtons times millimetres a minute that make a watt. */
export const wattWork = 60_000;
const pound = 0.45359237;
const poundForce = pound * 9.80665;
const horsepower = (550 * 12 * inch * poundForce) / 1000; // N·mm/s to W
const plain = (unit: string, most: number): QuantityRow => ({
  inch: { factor: 1, unit },
  metric: { factor: 1, unit },
  most,
});
const both = (
  inchFactor: number,
  inchUnit: string,
  metricFactor: number,
  metricUnit: string,
  most: number,
): QuantityRow => ({
  inch: { factor: inchFactor, unit: inchUnit },
  metric: { factor: metricFactor, unit: metricUnit },
  most,
});

export const quantities = {
  size: both(inch, "in", 1, "mm", 10_000),
  length: both(inch, "in", 1, "mm", 1_000_000),
  area: both(inch ** 2, "in²", 100, "cm²", 1e13),
  areaRate: both(inch ** 2, "in²/min", 100, "cm²/min", 1e8),
  bandSpeed: both(12 * inch, "ft/min", 1000, "m/min", 1e7),
  feed: both(inch, "in/min", 1, "mm/min", 1e6),
  chip: both(inch / 1000, "thou", 0.001, "µm", 10),
  mass: both(pound, "lb", 1, "kg", 1e9),
  power: both(horsepower, "hp", 1000, "kW", 1e6),
  force: both(poundForce, "lbf", 1, "N", 1e7),
  stress: both((poundForce * 1000) / inch ** 2, "ksi", 1, "MPa", 5000),
  density: both(pound / inch ** 3, "lb/in³", 1e-9, "kg/m³", 30_000e-9),
  pricePerMass: both(1 / pound, "per lb", 1, "per kg", 1e9),
  money: plain("", 1e12),
  moneyPerHour: plain("per hour", 1e9),
  minutes: plain("min", 1e8),
  hours: plain("h", 1e7),
  months: plain("months", 1e6),
  count: plain("", 1e9),
  ratio: plain("", 1e6),
  share: plain("", 1),
  hardness: plain("HB", 1000),
  teethPerInch: plain("teeth per inch", 100),
  degrees: plain("°", 360),
  /** An area in the user's own unit: blade triples carry life, rate and area in one unit that is never converted. */
  ownArea: plain("", 1e15),
} as const satisfies Record<string, QuantityRow>;

export type Quantity = keyof typeof quantities;
