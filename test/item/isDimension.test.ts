import { expect, it } from "vitest";
import { isDimension } from "../../src/item/isDimension";
import type { Units } from "../../src/quantities";
import { lineOf } from "./line";

it.each<[string, Units, boolean]>([
  ["304 x 12", "inch", true],
  ["304 mm", "inch", true],
  ['304"', "inch", true],
  ["304 OD", "inch", true],
  ["40 std", "inch", true],
  ["304 RD", "inch", false],
  ["304 L", "inch", false],
  ["4140 x 6", "inch", false],
  ["1020 x 6", "metric", true],
  ["100 m", "metric", false],
])("the number of %s (%s): %s (common practice, no source)", (text, units, dimension) => {
  expect(isDimension(lineOf(text, units), 0)).toBe(dimension);
});

it("what stands behind an x or a schedule", () => {
  expect(isDimension(lineOf("x 304"), 1)).toBe(true);
  expect(isDimension(lineOf("sch 40"), 1)).toBe(true);
});

it.each<[string, Units, boolean]>([
  ["304 by 12", "inch", true],
  ["304 wall", "inch", true],
  ["304 ft", "inch", true],
  ["304 W", "inch", false],
  ["100m", "metric", true],
  ["4140x6", "inch", true],
  ["41400 x 6", "inch", false],
  ["414000 x 6", "inch", true],
  ["414 x 6", "inch", true],
  ["400 std", "inch", false],
  ["4 xxs", "inch", true],
  ["304", "inch", false],
])("the number of %s (%s): %s", (text, units, dimension) => {
  expect(isDimension(lineOf(text, units), 0)).toBe(dimension);
});
it.each(["sch", "sched", "schedule", "nps", "dn", "x", "by"])("what stands behind %s is one", (word) => {
  expect(isDimension(lineOf(`${word} 304`), 1)).toBe(true);
});
it("words that are read already open nothing", () => {
  const line = lineOf("304 mm");
  line.roles[1] = "length";
  expect(isDimension(line, 0)).toBe(false);
  const behind = lineOf("x 304");
  behind.roles[0] = "quantity";
  expect(isDimension(behind, 1)).toBe(false);
});
