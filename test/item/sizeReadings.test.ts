import { expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { sizeReadings } from "../../src/item/sizeReadings";
import { lineOf } from "./line";

const read = (text: string) => {
  const { atoms, units } = lineOf(text);
  const readings = sizeReadings(
    atoms,
    atoms.map((_, i) => i),
    units,
  );
  return readings instanceof InputError
    ? readings.problem
    : readings.map(({ section, left, behindX }) => [section.text, left.map((i) => atoms[i]!.text).join(""), behindX]);
};

it("whole, without what stands behind the x, without what stands apart (common practice, no source)", () => {
  expect(read("round 3")).toEqual([["round 3 in", "", false]]);
  expect(read("round 3 x 12")).toEqual([["round 3 in", "x12", true]]);
  expect(read("round 3 5")).toEqual([
    ["round 5 in", "3", false],
    ["round 3 in", "5", false],
  ]);
  expect(read(`round 3 36"`)).toEqual([["round 3 in", `36"`, false]]);
  expect(read("2 flat 6x1x12")).toEqual([["flat 6 in x 1 in", "2x12", true]]);
  expect(read("tube 3x.25x21")).toEqual([["tube 3 in x 0.25 in wall", "x21", true]]);
  expect(read("hexx 2")).toContain("unknown word");
  expect(read("round")).toContain("has no dimensions");
});
