import { InputError } from "../errors";
import type { Units } from "../quantities";
import type { Token } from "./sizeTokens";

/** A dimension with its unit. */
export interface Dimension {
  readonly mm: number;
  /** As it is printed: 3.5 in. */
  readonly text: string;
  readonly tag: string;
}

export interface Dimensions {
  readonly list: readonly Dimension[];
  /** Unit of the first dimension. */
  readonly unit: "in" | "mm";
  /** Note where no unit was written. */
  readonly notes: readonly string[];
}

const factors: ReadonlyMap<string, number> = new Map([
  ["in", 25.4],
  ["mm", 1],
  ["cm", 10],
]);
const greatest = 4000; // mm

/**
 * Gives every dimension its unit: its own; else the last one written; else inches where there is a fraction; else the family's; else the
 * default. A unit that was not written must give a likely size.
 * @param numbers of the bar [-]
 * @param name of the shape, for refusals [text]
 * @param family unit that the shape's designation implies, if any [text]
 * @param defaultUnit unit of bare numbers [text]
 * @returns dimensions [mm]
 * @throws InputError "invalid": a fraction of a millimetre, over 4 m, under 0.1 mm, unlikely without a unit
 * @source common practice; the limits are judgement
 */
export function sizeUnits(
  numbers: readonly Token[],
  name: string,
  family: "in" | "mm" | undefined,
  defaultUnit: Units,
): Dimensions {
  const written = numbers.map(({ unit }) => unit).filter((unit) => factors.has(unit));
  const fraction = numbers.some((number) => number.fraction);
  const implied = fraction ? "in" : family;
  const bare = written[written.length - 1] ?? implied ?? (defaultUnit === "inch" ? "in" : "mm");
  const unitOf = ({ unit }: Token) => (factors.has(unit) ? unit : bare);
  const list = numbers.map((number) => dimension(number, unitOf(number), name));
  if (written.length === 0) refuseUnlikely(list, numbers, bare, name, fraction ? 60 : family === undefined ? 30 : 48);
  const assumed = written.length === 0 && implied === undefined;
  const notes = assumed ? [bare === "in" ? "inches assumed" : "millimetres assumed"] : [];
  return { list, unit: unitOf(numbers[0]!) === "in" ? "in" : "mm", notes };
}

function dimension(number: Token, unit: string, name: string): Dimension {
  if (number.fraction && unit !== "in")
    throw new InputError("invalid", "section", "fractions are only read as inches; write millimetres as decimals");
  const mm = number.value * factors.get(unit)!;
  if (mm > greatest) throw tooBig(name, number, unit, mm);
  if (mm < 0.1)
    throw new InputError("invalid", "section", "{size} is too small for a dimension", {
      size: `${number.text} ${unit}`,
    });
  return { mm, text: `${number.value} ${unit}`, tag: number.tag };
}

function tooBig(name: string, number: Token, unit: string, mm: number): InputError {
  const facts = { name, size: `${number.text} ${unit}`, mm: String(Math.round(mm)) };
  const hint =
    unit === "in" ? ' ({mm} mm) is too big for a saw; add "mm" if the size is metric' : " is too big for a saw";
  return new InputError("invalid", "section", `a {name} of {size}${hint}`, facts);
}

function refuseUnlikely(
  list: readonly Dimension[],
  numbers: readonly Token[],
  unit: string,
  name: string,
  mostInches: number,
): void {
  const largest = list.reduce((best, { mm }, i) => (mm > list[best]!.mm ? i : best), 0);
  const { mm } = list[largest]!;
  const facts = { name, number: numbers[largest]!.text, limit: String(mostInches) };
  if (unit === "in" && mm > mostInches * 25.4) {
    throw new InputError(
      "invalid",
      "section",
      "a {name} of {number} in is unlikely (over {limit} in) and no unit is written: write the unit, {number} in or {number} mm",
      facts,
    );
  }
  if (unit === "mm" && mm < (list.length > 1 ? 10 : 6)) {
    throw new InputError(
      "invalid",
      "section",
      "a {name} of {number} mm is unlikely and no unit is written: write the unit, {number} mm or {number} in",
      facts,
    );
  }
}
