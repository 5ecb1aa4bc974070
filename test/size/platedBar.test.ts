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
  // A channel's web as thick as its flange is wide is a bar; one a hair thinner is a channel.
  expect(() => readSection("u 400x20x20 mm", "metric")).toThrow();
  expect(readSection("u 400x20x19.9 mm", "metric").area).toBeCloseTo(2 * 20 * 19.9 + (400 - 39.8) * 19.9, 6);
  expect(platedBar("h", [], "metric")).toBeUndefined();
});
