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
