import { expect, it } from "vitest";
import { normalShare } from "../../src/statistics/normalShare";

it.each([
  [0, 0.5],
  [1, 0.8413447461],
  [1.644853627, 0.95],
  [1.959963985, 0.975],
  [2.575829304, 0.995],
  [-3, 0.001349898032],
  [-4.5, 3.397673125e-6],
])("Φ(%s) = %s (printed normal tables)", (x, share) => {
  expect(Math.abs(normalShare(x) - share)).toBeLessThan(1.2e-7 * Math.min(share, 1 - share) + 1e-10);
});

it("both sides make one (law)", () => {
  for (let x = -6; x <= 6; x += 0.37) expect(normalShare(x) + normalShare(-x)).toBeCloseTo(1, 12);
});
