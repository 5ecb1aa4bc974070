import { describe, expect, it } from "vitest";
import { sizeModifiers } from "../../src/size/sizeModifiers";
import { sizePhrases } from "../../src/size/sizePhrases";
import { sizeTokens } from "../../src/size/sizeTokens";
import { refusal } from "../section/fixture";

const read = (text: string) => sizeModifiers(sizePhrases(sizeTokens(text)));

describe("sizeModifiers (common practice, no source)", () => {
  it("takes out everything but the bar", () => {
    const { bar, ...rest } = read("round 2 bundle 3x4 nested rot 10 mitre 30 upright");
    expect(bar.map(({ text }) => text)).toEqual(["round", "2"]);
    expect(rest).toEqual({ lie: "upright", rows: 3, columns: 4, nested: true, counted: false, turn: 10, mitre: 30 });
  });
  it("nothing said: one bar, square cut", () => {
    expect(read("round 2")).toMatchObject({ lie: undefined, rows: 1, columns: 1, nested: false, turn: 0, mitre: 0 });
  });
  it.each([
    ["flat 1 on edge upright", "two orientations given (edge and upright)"],
    ["round 2 bundle 2x2 bundle 2x2", '"bundle" is given twice'],
    ["round 2 mitre 61", "a mitre of 61 degrees is more than 60; 0 is a square cut"],
    ["round 2 rot 361", "more than 360"],
    ["round 2 nested", "belongs to a bundle"],
  ])("%s is refused: %s", (text, part) => {
    expect(refusal(() => read(text)).sentence).toContain(part);
  });
});

it.each([
  ["flat 1 on edge upright", "two orientations given (edge and upright)"],
  ["round 2 bundle 2x2 bundle 2x2", '"bundle" is given twice'],
  ["round 2 mitre 30 mitre 30", '"mitre" is given twice'],
  ["round 2 rot 10 rot 20", '"turn" is given twice'],
  ["round 2 bundle 2x2 nested nested", '"nested" is given twice'],
  ["round 2 mitre 61", "a mitre of 61 degrees is more than 60; 0 is a square cut"],
  ["flat 2x1 rot 361", "a turn of 361 degrees is more than 360"],
  ["round 2 bundle 1x1 nested", '"nested" belongs to a bundle: "round 2 bundle 3x4 nested"'],
])("%s is refused whole: %s", (text, sentence) => {
  expect(refusal(() => read(text))).toEqual({ reason: "invalid", parameter: "section", sentence });
});
it("60 degrees of mitre and 360 of turn are the most; a bundle of one row may be nested", () => {
  expect(read("flat 2x1 mitre 60 rot 360")).toMatchObject({ mitre: 60, turn: 360 });
  expect(read("round 2 bundle 1x2 nested")).toMatchObject({ nested: true, rows: 1, columns: 2 });
  expect(read("4 pcs round 2")).toMatchObject({ counted: true, rows: 1, columns: 4 });
});
