import { InputError } from "../src/errors";
import { quantities, type Quantity, type Units } from "../src/quantities";
import type { BladeClass } from "../src/cutting/bladeClass";
import { readPitch } from "../src/cutting/readPitch";
import type { Pitch } from "../src/cutting/pitch";
import type { Blade, Offer } from "../src/cost/blade";
import type { Item, OrderItem } from "../src/item/item";
import { readItem } from "../src/item/readItem";
import { findMaterial } from "../src/material/findMaterial";
import { matchMaterial, type MaterialMatch } from "../src/material/matchMaterial";
import type { Material } from "../src/material/material";
import { readLength } from "../src/section/readLength";
import { readSection } from "../src/section/readSection";
import { sectionProfile } from "../src/section/sectionProfile";
import type { Section } from "../src/section/section";
import type { Shape } from "../src/section/shape";
import { isBlank, type Cell } from "./cell";
import type { Kind, Reading } from "./entry";
import { plainNumber } from "./sentence";

/** The limits of a number, in the core's unit. */
export interface Limits {
  /** Accepted from here, inclusive; left out: anything above 0. */
  readonly least?: number;
  /** Accepted up to here, inclusive; left out: the quantity's own limit. */
  readonly most?: number;
  /** 0 is a value, not a blank cell. */
  readonly zeroIsValue?: boolean;
  readonly whole?: boolean;
}

const printed = (core: number, quantity: Quantity, units: Units): string => {
  const { factor, unit } = quantities[quantity][units];
  return `${plainNumber(core / factor)} ${unit}`.trim();
};

const wrongType = (cell: Cell, parameter: string, wanted: string): InputError =>
  new InputError("invalid", parameter, typeof cell === "boolean" ? `{parameter} is TRUE or FALSE, not ${wanted}` : `{parameter} is text, not ${wanted}`);

const isTooLow = (value: number, { least, zeroIsValue }: Limits): boolean => (least !== undefined ? value < least : zeroIsValue === true ? value < 0 : !(value > 0));

/** Says what is wrong with a number; apart from the loop, which only asks whether anything is. */
function numberRefusal(value: number, quantity: Quantity, limits: Limits, parameter: string): InputError {
  const most = limits.most ?? quantities[quantity].most;
  const refuse = (problem: string, limit: number): InputError => new InputError("invalid", parameter, problem, { limit: { number: limit, quantity }, value: { number: value, quantity } });
  const inclusive = limits.zeroIsValue === true || limits.least !== undefined;
  if (isTooLow(value, limits)) return refuse(`{parameter} must be ${inclusive ? "at least" : "more than"} {limit}; it is {value}`, limits.least ?? 0);
  if (value > most) return refuse("{parameter} must be at most {limit}; it is {value}", most);
  return refuse("{parameter} must be a whole number; it is {value}", 0);
}

/** Reads one number: refuses text and TRUE or FALSE, converts to the core's unit, checks the range. */
export function readNumber(cell: Cell | undefined, quantity: Quantity, limits: Limits, units: Units, parameter: string): number {
  if (typeof cell !== "number") throw wrongType(cell ?? null, parameter, "a number");
  const of = quantities[quantity];
  const value = cell * of[units].factor;
  const wrong = isTooLow(value, limits) || value > (limits.most ?? of.most) || (limits.whole === true && !Number.isInteger(value));
  if (wrong) throw numberRefusal(value, quantity, limits, parameter);
  return value;
}

const saysRange = (quantity: Quantity, limits: Limits) => (units: Units) => {
  const unit = quantities[quantity][units].unit;
  const from = limits.least !== undefined ? `from ${printed(limits.least, quantity, units)}` : limits.zeroIsValue === true ? "0 or more" : "more than 0";
  const to = limits.most === undefined ? "" : ` to ${printed(limits.most, quantity, units)}`;
  return `${limits.whole === true ? "whole number" : "number"}${unit === "" ? "" : ` in ${unit}`}, ${from}${to}`;
};

/** A number of one quantity within its range. */
export const number = (quantity: Quantity, limits: Limits = {}): Kind<number> => ({
  name: "number",
  width: 1,
  zeroIsValue: limits.zeroIsValue ?? false,
  says: saysRange(quantity, limits),
  read: (cells, at, { units }, parameter) => readNumber(cells[at], quantity, limits, units, parameter),
});

const readText = (cell: Cell | undefined, parameter: string): string => {
  if (typeof cell === "string") return cell.trim();
  throw new InputError("invalid", parameter, typeof cell === "boolean" ? "{parameter} is TRUE or FALSE, not text" : "{parameter} is a number, not text");
};

/** Any text. */
export const text: Kind<string> = { name: "text", width: 1, zeroIsValue: false, says: () => "text", read: (cells, at, _, parameter) => readText(cells[at], parameter) };

/** One of a fixed list of words, read without regard to case. */
export const choice = <const W extends string>(...choices: readonly W[]): Kind<W> => ({
  name: "choice",
  width: 1,
  zeroIsValue: false,
  choices,
  says: () => choices.map((c) => `"${c}"`).join(" or "),
  read: (cells, at, _, parameter) => {
    const given = readText(cells[at], parameter).toLowerCase();
    const found = choices.find((c) => c.toLowerCase() === given);
    if (found === undefined) throw new InputError("invalid", parameter, '{parameter} must be {choices}; it is "{given}"', { choices: choices.map((c) => `"${c}"`).join(" or "), given: given.slice(0, 40) });
    return found;
  },
});

/** A cell that may hold text or a number and is read by a core reader, kept by the memo. */
const textual = <T>(name: string, says: string, read: (value: string | number, reading: Reading, parameter: string) => T, keyed: (reading: Reading) => string | undefined): Kind<T> => ({
  name,
  width: 1,
  zeroIsValue: false,
  says: () => says,
  read: (cells, at, reading, parameter) => {
    const cell = cells[at];
    if (typeof cell !== "string" && typeof cell !== "number") throw wrongType(cell ?? null, parameter, `a ${name}`);
    const key = keyed(reading);
    return key === undefined ? read(cell, reading, parameter) : reading.memo.get(name, `${key}|${typeof cell}|${String(cell)}`, () => read(cell, reading, parameter));
  },
});

/** A readers' refusal carries the reader's own name of the value; here it gets the argument's. */
const renamed = <T>(parameter: string, read: () => T): T => {
  try {
    return read();
  } catch (refusal) {
    if (refusal instanceof InputError && refusal.parameter !== "" && refusal.parameter !== parameter) throw new InputError(refusal.reason, parameter, refusal.problem, refusal.facts);
    throw refusal;
  }
};

const once = <T>(make: () => T): (() => T) => {
  let made: { readonly value: T } | undefined;
  return () => (made ??= { value: make() }).value;
};

/** A section with its profile, made when first wanted and kept with it. */
const withProfile = (read: Section): Shape => ({ ...read, profile: once(() => sectionProfile(read)) });

/** A size string. */
export const section: Kind<Shape> = textual(
  "section",
  'a size with its shape, such as "round 7" or "W12x50"',
  (value, { units }, parameter) =>
    renamed(parameter, () => withProfile(readSection(value, units))),
  ({ units }) => units,
);

/** A length: a number in the call's unit, or text with its own. */
export const length = (limits: Limits = {}): Kind<number> => ({
  name: "length",
  width: 1,
  zeroIsValue: limits.zeroIsValue ?? false,
  says: (units) => `length in ${quantities.length[units].unit}, or text such as "20 ft" or "6 m"`,
  read: (cells, at, { units, memo }, parameter) => {
    const cell = cells[at];
    if (typeof cell !== "string") return readNumber(cell, "length", limits, units, parameter);
    const mm = memo.get("length", `${units}|${cell}`, () => renamed(parameter, () => readLength(cell, units)));
    return readNumber(mm / quantities.length[units].factor, "length", limits, units, parameter);
  },
});

const readDesignation = (cell: Cell | undefined, parameter: string): string | number => {
  if (typeof cell === "string" || typeof cell === "number") return cell;
  throw wrongType(cell ?? null, parameter, "a material");
};

/** Any designation of a grade; a shop's own materials are found first and are never kept by the memo. */
export const material: Kind<Material> = textual(
  "material",
  'any designation, such as "304", "4140" or "1.4301"',
  (value, { shop }, parameter) => renamed(parameter, () => findMaterial(value, shop?.ownMaterials ?? [])),
  ({ shop }) => (shop === undefined || shop.ownMaterials.length === 0 ? "" : undefined),
);

/** A grade with how it was found, for the function that tells about it. */
export const matchedMaterial: Kind<MaterialMatch> = { ...(material as unknown as Kind<MaterialMatch>), read: (cells, at, { shop }, parameter) => renamed(parameter, () => matchMaterial(readDesignation(cells[at], parameter), shop?.ownMaterials ?? [])) };

/** A description line of an order list. */
export const description: Kind<Item> = textual(
  "description",
  "a description line, such as RND 3-1/2 4140 x 20 ft",
  (value, { units, shop }, parameter) => renamed(parameter, () => readItem(value, units, shop?.ownMaterials ?? [])),
  ({ units, shop }) => (shop === undefined || shop.ownMaterials.length === 0 ? units : undefined),
);

/** "12 pcs" before a size is a quantity to order, not a stack cut at once. */
const counted = /\b(?:pcs?|pieces?|off|ea)\b/i;

/** A text that is a size and nothing else; undefined where it says more, or is none. */
const onlySize = (value: string | number, units: Units): Section | undefined => {
  if (counted.test(String(value))) return undefined;
  try {
    return readSection(value, units);
  } catch (refusal) {
    if (refusal instanceof InputError) return undefined;
    throw refusal;
  }
};

/** A size, or a whole description line: a size alone is read by the size reader, so that it means what it means everywhere. */
export const orderItem: Kind<OrderItem> = textual(
  "order item",
  "a size, or a description line such as RND 3-1/2 4140 x 20 ft",
  (value, { units, shop }, parameter) => {
    const size = onlySize(value, units);
    const missing = (what: string): InputError => new InputError("invalid", what, "{parameter} is empty or 0");
    if (size !== undefined) return { shape: withProfile(size), grade: missing("material"), length: missing("length") };
    const { section: read, grade, length: long } = renamed(parameter, () => readItem(value, units, shop?.ownMaterials ?? []));
    return { shape: read instanceof InputError ? read : withProfile(read), grade, length: long };
  },
  ({ units, shop }) => (shop === undefined || shop.ownMaterials.length === 0 ? units : undefined),
);

/** A tooth pitch: "3/4", or a number for a straight one. */
export const pitch: Kind<Pitch> = textual("pitch", 'teeth per inch, "3/4" for variable, 4 for straight', (value, _, parameter) => renamed(parameter, () => readPitch(value)), () => "");

/** The class of band. */
export const bladeClass: Kind<BladeClass> = choice("bi-metal", "carbide");

const bladeCells = ["price", "life", "rate"] as const;
const bladeQuantity = { price: "money", life: "ownArea", rate: "ownArea" } as const;

const readBladeCell = (cells: readonly Cell[], at: number, units: Units, parameter: string, which: number): number => {
  const name = `${parameter} ${bladeCells[which]!}`;
  const cell = cells[at + which];
  if (isBlank(cell, false)) throw new InputError("invalid", name, "{parameter} is empty or 0");
  return readNumber(cell, bladeQuantity[bladeCells[which]!], {}, units, name);
};

/** A rate as large as the life would wear a blade out within a minute: the two cells are swapped. */
export const refuseSwapped = (life: number | undefined, rate: number | undefined, parameter: string): void => {
  if (life !== undefined && rate !== undefined && rate >= life) throw new InputError("invalid", parameter, "{parameter}: the rate is not less than the life; the three cells are price, life, rate, in that order");
};

/** A blade bought or in use: three neighbouring cells of one row, price, life, rate. */
export const blade: Kind<Blade> = {
  name: "blade",
  width: 3,
  zeroIsValue: false,
  says: () => "three neighbouring cells: price, life, rate, each more than 0",
  read: (cells, at, { units }, parameter) => {
    const [price, life, rate] = [0, 1, 2].map((i) => readBladeCell(cells, at, units, parameter, i)) as [number, number, number];
    refuseSwapped(life, rate, parameter);
    return { price, life, rate };
  },
};

/** A blade of which one cell may be blank: the one that is solved for. */
export const offer: Kind<Offer> = {
  name: "offer",
  width: 3,
  zeroIsValue: false,
  says: () => "three neighbouring cells: price, life, rate; the one solved for may be blank",
  read: (cells, at, { units }, parameter) => {
    const given = [0, 1, 2].map((i) => (isBlank(cells[at + i], false) ? undefined : readBladeCell(cells, at, units, parameter, i)));
    const missing = given.filter((x) => x === undefined).length;
    if (missing > 1) throw new InputError("invalid", parameter, "{parameter}: at most one of price, life and rate may be blank");
    const [price, life, rate] = given;
    refuseSwapped(life, rate, parameter);
    return { price, life, rate };
  },
};

/** A row of a headed table as it stands, at most 64 cells wide; functions/headedTable.ts reads all rows together. */
export const tableRow: Kind<readonly Cell[]> = {
  name: "table",
  width: 64,
  zeroIsValue: false,
  says: () => "a table with labels across its first row or down its first column",
  read: (cells, _, __, parameter) => {
    if (cells.some((cell) => typeof cell === "boolean")) throw new InputError("invalid", parameter, "{parameter} has TRUE or FALSE among its cells");
    return cells;
  },
};
