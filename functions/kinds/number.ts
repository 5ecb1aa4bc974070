import { InputError } from "../../src/errors";
import { quantities, type Quantity, type Units } from "../../src/quantities";
import type { Cell } from "./cell";
import type { Kind } from "./kind";
import { plainNumber } from "./sentence";
import { numberWords } from "./units";

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

export const wrongType = (cell: Cell, parameter: string, wanted: string): InputError =>
  new InputError(
    "invalid",
    parameter,
    typeof cell === "boolean" ? `{parameter} is TRUE or FALSE, not ${wanted}` : `{parameter} is text, not ${wanted}`,
  );

/** A limit that is a round number of the other unit system is met in spite of rounding. */
const slack = 1e-12;

const isTooLow = (value: number, { least, zeroIsValue }: Limits): boolean =>
  least !== undefined ? value < least - Math.abs(least) * slack : zeroIsValue === true ? value < 0 : !(value > 0);

/** Says what is wrong with a number; apart from the loop, which only asks whether anything is. */
function numberRefusal(value: number, quantity: Quantity, limits: Limits, parameter: string): InputError {
  const most = limits.most ?? quantities[quantity].most;
  const refuse = (problem: string, limit: number): InputError =>
    new InputError("invalid", parameter, problem, {
      limit: { number: limit, quantity },
      // Converted, the largest numbers of a cell are none any more.
      value: Number.isFinite(value) ? { number: value, quantity } : "beyond all numbers",
    });
  const inclusive = limits.zeroIsValue === true || limits.least !== undefined;
  if (isTooLow(value, limits))
    return refuse(
      `{parameter} must be ${inclusive ? "at least" : "more than"} {limit}; it is {value}`,
      limits.least ?? 0,
    );
  if (value > most * (1 + slack)) return refuse("{parameter} must be at most {limit}; it is {value}", most);
  return refuse("{parameter} must be a whole number; it is {value}", 0);
}

/** Reads one number: refuses text and TRUE or FALSE, converts to the core's unit, checks the range. */
export function readNumber(
  cell: Cell | undefined,
  quantity: Quantity,
  limits: Limits,
  units: Units,
  parameter: string,
): number {
  if (typeof cell !== "number") throw wrongType(cell ?? null, parameter, "a number");
  const of = quantities[quantity];
  const value = cell * of[units].factor;
  const wrong =
    isTooLow(value, limits) ||
    value > (limits.most ?? of.most) * (1 + slack) ||
    (limits.whole === true && !Number.isInteger(value));
  if (wrong) throw numberRefusal(value, quantity, limits, parameter);
  return value;
}

const saysRange = (quantity: Quantity, limits: Limits) => (units: Units) => {
  const from =
    limits.least !== undefined
      ? `from ${printed(limits.least, quantity, units)}`
      : limits.zeroIsValue === true
        ? "0 or more"
        : "more than 0";
  const to = limits.most === undefined ? "" : ` to ${printed(limits.most, quantity, units)}`;
  return `${numberWords(quantity, units, limits.whole === true ? "whole number" : "number")}, ${from}${to}`;
};

/** A number of one quantity within its range. */
export const number = (quantity: Quantity, limits: Limits = {}): Kind<number> => ({
  name: "number",
  width: 1,
  quantity,
  zeroIsValue: limits.zeroIsValue ?? false,
  says: saysRange(quantity, limits),
  read: (cells, at, { units }, parameter) => readNumber(cells[at], quantity, limits, units, parameter),
});
