import { InputError, type Fact } from "../errors";
import type { Item } from "./item";
import { itemOf } from "./itemOf";
import { itemRefusal } from "./itemRefusal";

const same = 1e-6;
const isSame = (one: number, other: number): boolean => Math.abs(one - other) <= same * Math.abs(other);

/**
 * A line of which nothing tells the unit, from its readings in both: where only one gives a size that one holds; what differs is refused
 * with both readings.
 * @param inch the line read in inches [-]
 * @param metric the line read in millimetres [-]
 * @returns what holds in both [-]
 * @source common practice, no source
 */
export function eitherUnit(inch: Item, metric: Item): Item {
  const [first, second] = [inch.section, metric.section];
  if (first instanceof InputError) return second instanceof InputError ? bothRefused(inch, metric, first) : metric;
  if (second instanceof InputError) return inch;
  return bothRefused(inch, metric, isSame(first.area, second.area) ? first : torn(first.text, second.text));
}

const torn = (first: Fact, second: Fact): InputError =>
  itemRefusal("no unit is written: {first} or {second}? Write the unit, or give units", { first, second });

/** The reading in inches, with a grade or a length that is another in millimetres refused. */
function bothRefused(inch: Item, metric: Item, section: Item["section"]): Item {
  return itemOf({ ...inch, section, grade: sameGrade(inch, metric), length: sameLength(inch.length, metric.length) });
}

/** Round 20 H13: the steel in inches, a tolerance in millimetres. */
function sameGrade({ grade, material }: Item, other: Item): Item["grade"] {
  const [first, second] = [material, other.material].map((name) => (name instanceof InputError ? "no grade" : name));
  return first === second ? grade : torn(first!, second!);
}

function sameLength(first: Item["length"], second: Item["length"]): Item["length"] {
  if (first instanceof InputError) return first;
  if (second instanceof InputError || isSame(first, second)) return second;
  return torn({ number: first, quantity: "length" }, { number: second, quantity: "length" });
}
