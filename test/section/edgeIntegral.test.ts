import { expect, it } from "vitest";
import { edgeIntegral } from "../../src/section/edgeIntegral";

it("straight: a trapezoid (geometry)", () => {
  expect(edgeIntegral({ top: 0, bottom: 10, x: 1, slope: 1, centre: 0, r: 0, side: 0 }, 2, 4)).toBe(8);
});
it("arc: a quarter of a disc beside its centre line (geometry)", () => {
  const arc = { top: 0, bottom: 5, x: 10, slope: 0, centre: 5, r: 5, side: 1 };
  expect(edgeIntegral(arc, 0, 5)).toBeCloseTo(50 + (25 * Math.PI) / 4, 12);
  expect(edgeIntegral({ ...arc, side: -1 }, 0, 5)).toBeCloseTo(50 - (25 * Math.PI) / 4, 12);
});
it("parts add up", () => {
  const arc = { top: 0, bottom: 5, x: 0, slope: 0, centre: 5, r: 5, side: 1 };
  expect(edgeIntegral(arc, 0, 2) + edgeIntegral(arc, 2, 5)).toBeCloseTo(edgeIntegral(arc, 0, 5), 12);
});
