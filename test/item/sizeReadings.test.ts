import { expect, it } from "vitest";
import { InputError } from "../../src/errors";
import type { Units } from "../../src/quantities";
import { sizeReadings } from "../../src/item/sizeReadings";
import { lineOf } from "./line";

const read = (text: string, given: Units = "inch") => {
  const { atoms, units } = lineOf(text, given);
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

it("the number behind Ø or AF is the size, whatever stands beside it (common practice, no source)", () => {
  expect(read("round Ø5 3")).toEqual([["round 5 in", "3", false]]);
  expect(read("3 round Ø5")).toEqual([["round 5 in", "3", false]]);
  expect(read("hex AF 2 3")).toEqual([["hex 2 in", "3", false]]);
  expect(read("3 hex AF 2")).toEqual([["hex 2 in", "3", false]]);
});

it("both sides of a hollow, and the wall apart from them; what may be a wall is no length of a solid (common practice, no source)", () => {
  expect(read("box 40x20 2 mm", "metric")).toEqual([["box 40 mm x 20 mm x 2 mm wall", "", false]]);
  expect(read("rhs 60x40 mm 3 mm", "metric")).toEqual([["box 60 mm x 40 mm x 3 mm wall", "", false]]);
  for (const solid of ["square 40x40 2 mm", "rect 40x20 2 mm", "square 40x40 19 mm"])
    expect(read(solid, "metric")).toContain("two numbers without an x between them");
  // A wall of half the side or more leaves no bore.
  expect(read("square 40x40 20 mm", "metric")).toEqual([["square 40 mm", "20mm", false]]);
  expect(read("rect 40x20 250 mm", "metric")).toEqual([["flat 40 mm x 20 mm", "250mm", false]]);
  expect(read("box 40x20 30 mm", "metric")).toContain("two numbers without an x");
});
