import { expect, it } from "vitest";
import { sizeDimensions } from "../../src/size/sizeDimensions";
import { sizeTokens } from "../../src/size/sizeTokens";
import { refusal } from "../section/fixture";

it("numbers between x signs", () => {
  expect(sizeDimensions(sizeTokens("6x4x1/4"), false).map(({ value }) => value)).toEqual([6, 4, 0.25]);
  expect(sizeDimensions(sizeTokens("12-50"), true).map(({ value }) => value)).toEqual([12, 50]);
  expect(sizeDimensions([], false)).toEqual([]);
});
it.each([
  ["6 1", 'two numbers without an x between them ("6 1")'],
  ["6-1", '"6-1" is unclear'],
  ["6xx1", "two x signs in a row"],
  ["6x", 'ends with an "x"'],
  ["x6", 'begins with an "x"'],
  ["6x0", "more than zero"],
  ["6'", "means feet"],
  ["6 ft", '"ft" is a length unit'],
  ["6 m", '"m" is a length unit'],
  ["2x2 11 ga", "11 gauge is 0.1196 in as steel sheet, 0.120 in as tube (Birmingham gauge)"],
  ["2x40 ga", "several gauge tables exist); give"],
])("%s is refused: %s (gauges from memory)", (text, part) => {
  expect(refusal(() => sizeDimensions(sizeTokens(text), false)).sentence).toContain(part);
});
