import { expect, it } from "vitest";
import { readSection } from "../../src/section/readSection";
import { sectionArea } from "../../src/section/sectionArea";

it.each([
  ["flat 6x1", 6 * 645.16],
  ["W12x50", 14.6 * 645.16], // ASTM A6/A6M
  ["flat 100 mm x 50 mm mitre 45", 5000 * Math.SQRT2], // geometry
  ["round 50 mm bundle 3x4", 12 * 625 * Math.PI],
  ["area 38.5", 38.5 * 645.16],
])("%s", (text, area) => {
  expect(sectionArea({ section: readSection(text, "inch") }) / area).toBeCloseTo(1, 12);
});
