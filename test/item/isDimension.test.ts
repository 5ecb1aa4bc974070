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
