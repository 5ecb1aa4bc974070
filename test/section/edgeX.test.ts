import { expect, it } from "vitest";
import { edgeX } from "../../src/section/edgeX";

it("straight: x + slope·(y − top)", () => {
  expect(edgeX({ top: 1, bottom: 5, x: 10, slope: 2, centre: 0, r: 0, side: 0 }, 3)).toBe(14);
});
it("arc: a 3-4-5 triangle, and no NaN a hair beyond its end", () => {
  const arc = { top: 0, bottom: 5, x: 10, slope: 0, centre: 5, r: 5, side: -1 };
  expect(edgeX(arc, 2)).toBe(6);
  expect(edgeX(arc, -1e-12)).toBe(10);
});
