import { expect, it } from "vitest";
import { readSection } from "../../src/section/readSection";
import { platedBar } from "../../src/size/platedBar";

it.each([
  ["h 200x100x6x8 mm", 2 * 100 * 8 + (200 - 16) * 6],
  ["u 40x20x3 mm", 2 * 20 * 3 + (40 - 6) * 3],
])("%s has the area of its plates (geometry)", (size, area) => {
  expect(readSection(size, "metric").area).toBeCloseTo(area, 6);
});
it("too thick a plate is refused; fewer numbers are no such section (definition)", () => {
  expect(() => readSection("h 200x100x60x120 mm", "metric")).toThrow();
  expect(platedBar("h", [], "metric")).toBeUndefined();
});
