import { InputError } from "../errors";
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
  if (first instanceof InputError) return second instanceof InputError ? bothRefused(inch, metric) : metric;
  if (second instanceof InputError) return inch;
  if (isSame(first.area, second.area)) return bothRefused(inch, metric);
  const section = itemRefusal("no unit is written: {first} or {second}? Write the unit, or give units", {
    first: first.text,
    second: second.text,
  });
  return itemOf({ ...bothRefused(inch, metric), section });
}

/** The reading in inches, with a grade or a length that is another in millimetres refused. */
function bothRefused(inch: Item, metric: Item): Item {
  const grades = [inch.grade, metric.grade];
  const isOne = inch.grade === metric.grade || grades.every((grade) => grade instanceof InputError);
  return itemOf({ ...inch, grade: isOne ? inch.grade : openGrade, length: sameLength(inch.length, metric.length) });
}

/** Round 20 H13: the steel in inches, a tolerance in millimetres. */
const openGrade = itemRefusal("no unit is written, and the grade depends on it: write the unit, or give units");

function sameLength(first: Item["length"], second: Item["length"]): Item["length"] {
  if (first instanceof InputError) return first;
  if (second instanceof InputError || isSame(first, second)) return second;
  return itemRefusal("no unit is written: {first} or {second}? Write the unit, or give units", {
    first: { number: first, quantity: "length" },
    second: { number: second, quantity: "length" },
  });
}
