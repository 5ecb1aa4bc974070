import { expect, it } from "vitest";
import { tubeThinnest } from "../../src/section/tubeThinnest";

/** The shortest single contact at n depths, and the one under which a fifth of them lie (by counting). */
const counted = (radius: number, bore: number): number => {
  const n = 200_000;
  const shortest = Array.from({ length: n }, (_, i) => {
    const y = radius * (-1 + (2 * (i + 0.5)) / n);
    const chord = 2 * Math.sqrt(radius ** 2 - y ** 2);
    const gap = Math.abs(y) < bore ? 2 * Math.sqrt(bore ** 2 - y ** 2) : 0;
    return gap >= 0.5 ? (chord - gap) / 2 : chord - gap;
  }).sort((a, b) => a - b);
  return shortest[Math.round(n / 5)]!;
};

it("is the contact that a fifth of the way stays below (counted over 200,000 depths)", () => {
  for (const [radius, bore] of [
    [50, 45],
    [12.5, 9.4],
    [60, 10],
    [60, 1],
    [200, 199],
    [30, 0.2],
  ] as const)
    expect(tubeThinnest({ radius, bore, share: 0.2 }) / counted(radius, bore), `${radius} ${bore}`).toBeCloseTo(1, 3);
});
it("without a bore: 0.6 of the diameter (geometry)", () => {
  expect(tubeThinnest({ radius: 50, bore: 0, share: 0.2 })).toBeCloseTo(60, 9);
});
