import { expect, it } from "vitest";
import { lengthOf } from "../../src/item/lengthOf";
import type { Units } from "../../src/quantities";
import { readSection } from "../../src/section/readSection";
import type { Section } from "../../src/section/section";
import { sentence } from "./fixture";

const round = readSection("round 3 in", "inch");
const beam = readSection("W12x50", "inch");

it("a length in the call's unit, or its own (1 in = 25.4 mm)", () => {
  expect(lengthOf({ text: "12", bare: true }, round, "inch", false)).toBeCloseTo(304.8, 9);
  expect(lengthOf({ text: "3000", bare: true }, beam, "metric", false)).toBe(3000);
  expect(lengthOf({ text: "40'", bare: false }, beam, "inch", true)).toBeCloseTo(12192, 9);
  expect(lengthOf({ text: "240", bare: true }, beam, "inch", false)).toBeCloseTo(6096, 9);
});

it("is refused where the trade writes feet or metres too, and where nothing is so long", () => {
  expect(sentence(lengthOf({ text: "20", bare: true }, beam, "inch", false))).toContain("20 in or 20 ft");
  expect(sentence(lengthOf({ text: "12", bare: true }, round, "inch", true))).toContain("12 in or 12 ft");
  expect(sentence(lengthOf({ text: "6", bare: true }, round, "metric", false))).toContain("6 mm or 6 m");
  expect(sentence(lengthOf({ text: "6000", bare: true }, round, "inch", false))).toContain("6000 in or 6000 mm");
  expect(sentence(lengthOf({ text: "0 ft", bare: false }, round, "inch", false))).toContain("more than zero");
  expect(sentence(lengthOf({ text: "1,250 mm", bare: false }, round, "inch", false))).toContain("could mean");
});

it("refusals whole, and the limits themselves", () => {
  const of = (
    text: string,
    bare: boolean,
    units: Units,
    more: { section?: Section; random?: boolean; torn?: boolean } = {},
  ) => lengthOf({ text, bare }, more.section ?? round, units, more.random ?? false, more.torn ?? false);
  expect(sentence(of("1.250 mm", false, "inch"))).toBe("1.250 mm may be 1.25 or 1250 mm: write it without the point");
  expect(sentence(of("1.250mm", false, "inch"))).toBe("1.250mm may be 1.25 or 1250 mm: write it without the point");
  expect(sentence(of("3.000", true, "metric"))).toBe("3.000 may be 3. or 3000 mm: write it without the point");
  expect(of("1.250", true, "inch")).toBeCloseTo(1.25 * 25.4, 9);
  expect(sentence(of("132 ft", false, "inch"))).toBe(
    "132 ft is longer than any bar: is it the length of the whole order?",
  );
  expect(of("131 ft", false, "inch")).toBeCloseTo(131 * 304.8, 6);
  expect(of("40 m", false, "inch")).toBe(40_000);
  expect(sentence(of("0", true, "inch"))).toBe("a length must be more than zero");
  expect(sentence(of("12", true, "inch", { torn: true }))).toBe(
    "the line has inches and millimetres: 12 in or 12 mm? Write the length's unit",
  );
  const torn = (text: string, unit: string, other: string) =>
    `a length of ${text} without a unit may be ${text} ${unit} or ${text} ${other}: write the unit`;
  // Bars are sold up to 65 ft; the same number of inches is refused for beams and for random lengths.
  expect(sentence(of("65", true, "inch", { section: beam }))).toBe(torn("65", "in", "ft"));
  expect(of("66", true, "inch", { section: beam })).toBeCloseTo(66 * 25.4, 9);
  expect(sentence(of("12", true, "metric"))).toBe(torn("12", "mm", "m"));
  expect(of("13", true, "metric")).toBe(13);
  // 20 m is the longest piece whose unit may be left out.
  expect(of("20000", true, "metric")).toBe(20_000);
  expect(sentence(of("20001", true, "metric"))).toBe(torn("20001", "mm", "in"));
  expect(sentence(of("788", true, "inch"))).toBe(torn("788", "in", "mm"));
  expect(of("787", true, "inch")).toBeCloseTo(787 * 25.4, 9);
});
