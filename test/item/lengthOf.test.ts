import { expect, it } from "vitest";
import { lengthOf } from "../../src/item/lengthOf";
import { readSection } from "../../src/section/readSection";
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
