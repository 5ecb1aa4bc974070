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

/** The reading in inches, with a length that is another in millimetres refused. */
function bothRefused(inch: Item, metric: Item): Item {
  const [first, second] = [inch.length, metric.length];
  if (first instanceof InputError) return inch;
  if (second instanceof InputError) return { ...inch, length: second };
  if (isSame(first, second)) return inch;
  return {
    ...inch,
    length: itemRefusal("no unit is written: {first} or {second}? Write the unit, or give units", {
      first: { number: first, quantity: "length" },
      second: { number: second, quantity: "length" },
    }),
  };
}
