import { expect, it } from "vitest";
import { bundleAt } from "../../src/size/bundleAt";
import { sizeTokens } from "../../src/size/sizeTokens";
import { refusal } from "../section/fixture";

it.each([
  ["bundle 3x4", 3, 4, 4],
  ["bundle of 3 by 4", 3, 4, 5],
  ["3x4 bundle of round", 3, 4, 5],
  ["3x4 of round", 3, 4, 4],
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
