import { expect, it } from "vitest";
import { bundleAt } from "../../src/size/bundleAt";
import { sizeTokens } from "../../src/size/sizeTokens";
import { refusal } from "../section/fixture";

it.each([
  ["bundle 3x4", 3, 4, 4],
  ["bundle of 3 by 4", 3, 4, 5],
  ["3x4 bundle of round", 3, 4, 5],
  ["3x4 bundle", 3, 4, 4],
  ["3x4 of round", 3, 4, 4],
  ["2 high x 3 round", 2, 1, 2],
  ["3 wide 2 round", 1, 3, 2],
  ["bundle 100x100", 100, 100, 4],
  ["2 high 3 wide", 2, 3, 4],
  ["3 wide x 2 high", 2, 3, 5],
  ["5 wide", 1, 5, 2],
  ["4 high", 4, 1, 2],
  ["stack of 4", 4, 1, 3],
  ["4 pcs of square", 1, 4, 3],
])("%s is %d rows of %d (common practice, no source)", (text, rows, columns, length) => {
  expect(bundleAt(sizeTokens(text), 0)).toMatchObject({ kind: "bundle", rows, columns, length });
});
it.each(["6x1 flat", "round", "3/4 wide", "3 in wide", "7"])("%s is no bundle", (text) => {
  expect(bundleAt(sizeTokens(text), 0)).toBeUndefined();
});
it.each([
  ["bundle", "a bundle is written"],
  ["bundle 3", "a bundle is written"],
  ["bundle 1.5x2", "a bundle is written"],
  ["bundle 0x4", "at least 1 row and 1 column"],
  ["0 wide", "at least 1 row and 1 column"],
  ["bundle 200x2", "more than 100"],
])("%s is refused: %s", (text, part) => {
  expect(refusal(() => bundleAt(sizeTokens(text), 0)).sentence).toContain(part);
});

it.each(["bundle", "bundled", "stack", "stacked"])("%s 2x3 and 2x3 %s are 2 rows of 3", (word) => {
  expect(bundleAt(sizeTokens(`${word} 2x3`), 0)).toMatchObject({ rows: 2, columns: 3 });
  expect(bundleAt(sizeTokens(`2x3 ${word}`), 0)).toMatchObject({ rows: 2, columns: 3 });
});
it.each([
  ["high", 4, 1],
  ["rows", 4, 1],
  ["row", 4, 1],
  ["wide", 1, 4],
  ["columns", 1, 4],
  ["column", 1, 4],
  ["pcs", 1, 4],
  ["pc", 1, 4],
  ["pieces", 1, 4],
  ["piece", 1, 4],
  ["off", 1, 4],
])("4 %s: %d rows of %d; only pieces are a count", (word, rows, columns) => {
  const counted = /^p|off/.test(word);
  expect(bundleAt(sizeTokens(`4 ${word}`), 0)).toEqual({ kind: "bundle", rows, columns, counted, length: 2 });
});
it("refusals whole", () => {
  const says = (text: string) => refusal(() => bundleAt(sizeTokens(text), 0));
  const form = 'a bundle is written "bundle rows x columns", for example "round 2 bundle 3x4"';
  for (const text of ["bundle", "bundle x 3", "bundle 2 x", "stack 2 x", "bundle 2", "bundle 2x1.5"])
    expect(says(text)).toEqual({ reason: "invalid", parameter: "section", sentence: form });
  for (const text of ["bundle 0x1", "bundle 1x0"])
    expect(says(text)).toEqual({
      reason: "invalid",
      parameter: "section",
      sentence: "a bundle needs at least 1 row and 1 column",
    });
  for (const size of ["101 x 1", "1 x 101"])
    expect(says(`bundle ${size}`)).toEqual({
      reason: "invalid",
      parameter: "section",
      sentence: `a bundle of ${size} has more than 100 rows or columns`,
    });
});
it("a fraction or a number with a unit begins no bundle, nor does one in the middle of a size", () => {
  expect(bundleAt(sizeTokens("3x1/2 bundle"), 0)).toBeUndefined();
  expect(bundleAt(sizeTokens("3 mm x 4 bundle"), 0)).toBeUndefined();
  expect(bundleAt(sizeTokens("round 3x4 bundle"), 1)).toBeUndefined();
});
