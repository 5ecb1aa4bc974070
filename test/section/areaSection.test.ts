import { expect, it } from "vitest";
import { areaSection } from "../../src/section/areaSection";
import { refusal } from "./fixture";

it.each([
  ["area 38.5", "inch", 38.5 * 645.16, "area 38.5 in2"],
  ["area 38.5", "metric", 3850, "area 38.5 cm2"],
  ["area 38,5 cm2", "inch", 3850, "area 38.5 cm2"],
  ["area 10 sq in", "metric", 6451.6, "area 10 in2"],
  ["area 500 mm^2", "inch", 500, "area 500 mm2"],
] as const)("%s (%s)", (text, unit, area, canonical) => {
  expect(areaSection(text, unit)).toMatchObject({
    area: expect.closeTo(area, 9),
    pieceArea: expect.closeTo(area, 9),
    text: canonical,
    outline: undefined,
    pieces: 1,
  });
});
it.each(["round 7", "area", "area round 7"])("%s is another size", (text) => {
  expect(areaSection(text, "inch")).toBeUndefined();
});
it.each([
  ["area 1,250", "could mean"],
  ["area 3/4", "as a decimal number"],
  ["area 5 acres", "written alone"],
  ["area 5 bundle 2x2", "written alone"],
  ["area 0", "out of range"],
  ["area 99999999", "out of range"],
])("%s is refused: %s", (text, part) => {
  expect(refusal(() => areaSection(text, "inch")).sentence).toContain(part);
});

it.each([
  ["area 0.009 mm2", "an area of 0.009 mm2 is out of range"],
  ["area 16000001 mm2", "an area of 16000001 mm2 is out of range"],
  ["area 200000", "an area of 200000 in2 is out of range"],
  ["area 3/4", 'an area is written alone, as a decimal number: "area 38.5", with in2, cm2 or mm2 behind it if wanted'],
])("%s is refused whole: %s", (text, sentence) => {
  expect(refusal(() => areaSection(text, "inch"))).toEqual({ reason: "invalid", parameter: "section", sentence });
});
it("the least and the greatest area, and everything that is known of it (definition)", () => {
  expect(areaSection("area 0.01 mm2", "inch")).toEqual({
    text: "area 0.01 mm2",
    note: "area 0.01 mm2",
    area: 0.01,
    pieces: 1,
    rows: 1,
    columns: 1,
    nested: false,
    pieceArea: 0.01,
    hollow: false,
    mitre: 0,
    outline: undefined,
  });
  expect(areaSection("area 16000000 mm2", "inch")!.area).toBe(16e6);
  expect(areaSection("area 5", "inch")!.note).toBe("area 5 in2, in2 assumed");
  expect(areaSection("area 5", "metric")!.note).toBe("area 5 cm2, cm2 assumed");
});
it.each([
  ["in2", 645.16],
  ["sq in", 645.16],
  ["cm2", 100],
  ["sq cm", 100],
  ["mm2", 1],
  ["sq. mm", 1],
])("area 7 %s is 7 times %d mm² (1 in = 25.4 mm)", (unit, square) => {
  expect(areaSection(`area 7 ${unit}`, "metric")!.area).toBeCloseTo(7 * square, 9);
});
