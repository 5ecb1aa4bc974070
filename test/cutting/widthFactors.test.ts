import fc from "fast-check";
import { expect, it } from "vitest";
import { widthFactors } from "../../src/cutting/widthFactors";

it("are 1 at 100 mm, follow the table, and stay within their ends (derived, low confidence)", () => {
  expect(widthFactors(100)).toEqual({ speed: 1, chip: 1 });
  for (const [width, chip] of [
    [10, 0.8],
    [25, 0.8],
    [50, 0.9],
    [200, 1],
    [400, 0.9],
    [900, 0.9],
  ] as const)
    expect(widthFactors(width).chip).toBeCloseTo(chip, 12);
  expect(widthFactors(Math.sqrt(25 * 50)).chip).toBeCloseTo(0.85, 12);
  expect(widthFactors(177.8).speed).toBeCloseTo(0.9173, 4);
  fc.assert(
    fc.property(fc.double({ min: 0.5, max: 4000, noNaN: true }), (width) => {
      const { speed, chip } = widthFactors(width);
      expect(speed).toBeGreaterThanOrEqual(0.75);
      expect(speed).toBeLessThanOrEqual(1.2);
      expect(chip).toBeGreaterThanOrEqual(0.8);
      expect(chip).toBeLessThanOrEqual(1);
    }),
    { seed: 4 },
  );
});
