import { describe, expect, it } from "vitest";
import { contactRows } from "../../src/section/contactRows";
import { refusal, shape } from "./fixture";

const rows = (text: string, steps: number) => contactRows({ section: shape(text), steps });

describe("contactRows (geometry)", () => {
  it("round: 2√(y(d − y)) from top to bottom", () => {
    const found = rows("round 100 mm", 10);
    expect(found).toHaveLength(11);
    for (const { depth, width, longest } of found) {
      expect(width).toBeCloseTo(2 * Math.sqrt(depth * (100 - depth)), 4);
      expect(longest).toBe(width);
    }
    expect([found[0]!.width, found[10]!.width]).toEqual([0, 0]);
  });
  it("where the width jumps the larger side counts, at both ends alike (box 100 x 100 x 5 at 5 mm from its ends)", () => {
    const found = rows("box 100 mm x 100 mm x 5 mm", 20);
    expect(found.map(({ width }) => Number(width.toFixed(6)))).toEqual(
      [...found].reverse().map(({ width }) => Number(width.toFixed(6))),
    );
    expect(found[1]!.width).toBeGreaterThan(95);
  });
  it("a beam lying on its flanges: one cut in the web, two in the flanges", () => {
    const found = rows("HEB 200", 2);
    expect(found[1]!.longest).toBeCloseTo(found[1]!.width, 9);
    expect(found[0]!.longest * 2).toBeCloseTo(found[0]!.width, 9);
  });
  it("rows of a bundle repeat, touching rows count on both sides", () => {
    const found = rows("flat 60 mm x 10 mm bundle 3x2", 6);
    expect(found.map(({ width }) => width)).toEqual(Array.from({ length: 7 }, () => expect.closeTo(120, 9) as number));
  });
  it("an angle is not its own mirror image: the leg is at the bottom, in every row", () => {
    const found = rows("angle 60 mm x 60 mm x 7.5 mm leg flat bundle 2x1", 32); // not in the tables: sharp corners
    const one = [...Array.from({ length: 14 }, () => 7.5), 60, 60];
    expect(found.map(({ width }) => Number(width.toFixed(9)))).toEqual([...one, 60, ...one.slice(1), 60]);
  });
  it("nested rounds: at a row's mid height the sum of the rows that the line meets", () => {
    const found = rows("round 20 mm bundle 3x2 nested", 2);
    const spacing = 10 * Math.sqrt(3);
    expect(found[1]!.depth).toBeCloseTo(10 + spacing, 9);
    expect(found[1]!.width).toBeCloseTo(40, 9);
  });
  it.each([0, 1.5, 1001, NaN])("%d steps are refused", (steps) => {
    expect(refusal(() => rows("round 7", steps))).toEqual({
      reason: "invalid",
      parameter: "steps",
      sentence: `${String(steps)} is not a whole number from 1 to 1000`,
    });
  });
});
