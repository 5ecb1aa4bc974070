import { describe, expect, it } from "vitest";
import { seenFormat } from "../../../functions/workbook/seenFormat";

/** Sections of number formats as ECMA-376 18.8.30 has them: above 0; below 0; 0; text. */
describe("what a reader sees of a number format", () => {
  it.each([
    [5, "0.00", true, "0.00"],
    [5, '0 "in"', true, '0 "in"'],
    [5, ";;;", false, ";;;"],
    ["x", ";;;", false, ";;;"],
    [-5, "0;", false, "0;"],
    [5, '0;"margin 30 %"', true, "0;0;0"],
    [-5, '0;"margin 30 %"', true, '"margin 30 %";"margin 30 %";"margin 30 %"'],
    [0, '0;-0;"none; ask Ann"', true, '"none; ask Ann";"none; ask Ann";"none; ask Ann"'],
    [5, '[>100]"dear";"cheap"', true, undefined],
    [null, '0;"hidden words"', true, undefined],
    [null, "0.00", true, "0.00"],
    ["round 7", '0 "in"', true, undefined],
    ["round 7", '0;;"secret";@', true, ";;;@"],
    [5, undefined, true, undefined],
  ] as const)("%j in %s", (value, format, isShown, sent) => {
    expect(seenFormat(value, format)).toEqual({ isShown, format: sent });
  });
});
