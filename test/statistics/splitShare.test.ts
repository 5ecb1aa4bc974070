import { describe, expect, it } from "vitest";
import { splitShare } from "../../src/statistics/splitShare";

/** Every split by the bits of a counter. */
const byBits = (pool: readonly number[], second: number): number[] => {
  const sums: number[] = [];
  for (let bits = 0; bits < 1 << pool.length; bits += 1) {
    const chosen = pool.filter((_, i) => (bits >> i) & 1);
    if (chosen.length === second) sums.push(chosen.reduce((a, b) => a + b, 0));
  }
  return sums;
};

describe("share of the splits above the one seen", () => {
  it("counts all of them where they are few: 3 and 3, the clearest one of 20 (counted by bits)", () => {
    expect(splitShare([1, 2, 3], [4, 5, 6], 1000)).toBe(0.5 / 20);
    expect(splitShare([4, 5, 6], [1, 2, 3], 1000)).toBe(19.5 / 20);
    const [first, second] = [
      [0.2, 0.9, -1.1, 0.4],
      [0.3, -0.5, 1, 0.1, 0.1],
    ];
    const sums = byBits([...first, ...second], 5);
    const seen = 1;
    const above = sums.filter((s) => s > seen + 1e-9).length + sums.filter((s) => Math.abs(s - seen) < 1e-9).length / 2;
    expect(splitShare(first, second, 1000)).toBeCloseTo(above / sums.length, 12);
  });
  it("draws as many where they are more, the same ones every time, near the share of all", () => {
    const [first, second] = [
      [0.2, 0.9, -1.1, 0.4, 1.3, 0, 0.7, 0.6],
      [0.3, -0.5, 1, 0.1, 0.15, -0.8, 0.33, -0.2],
    ];
    const drawn = splitShare(first, second, 10_000);
    expect(drawn).toBe(splitShare(first, second, 10_000));
    expect(Math.abs(drawn - splitShare(first, second, 20_000))).toBeLessThan(0.015);
  });
});
