import { describe, expect, it } from "vitest";
import { studentShare } from "../../src/statistics/studentShare";

/** The density integrated step by step (Simpson), its constant from the integral over everything. */
const integrated = (t: number, df: number): number => {
  const density = (x: number): number => (1 + (x * x) / df) ** (-(df + 1) / 2);
  const sum = (from: number, to: number): number => {
    const steps = 40_000;
    const h = (to - from) / steps;
    let s = density(from) + density(to);
    for (let i = 1; i < steps; i += 1) s += density(from + i * h) * (i % 2 === 1 ? 4 : 2);
    return (s * h) / 3;
  };
  return 0.5 + sum(0, t) / (2 * sum(0, 4000));
};

describe("share of Student's distribution below t", () => {
  it("is 3/4 at 1 with one degree of freedom, the Cauchy distribution", () => {
    expect(studentShare(1, 1)).toBeCloseTo(0.75, 13);
    expect(studentShare(-1, 1)).toBeCloseTo(0.25, 13);
    expect(studentShare(0, 7)).toBe(0.5);
  });
  it.each([
    [0.3, 3],
    [1.2, 4.7],
    [2.5, 11],
    [1.2816, 200],
  ])("agrees with the density integrated: t %f, df %f", (t, df) => {
    expect(studentShare(t, df)).toBeCloseTo(integrated(t, df), 9);
  });
});

describe("published values of Student's distribution (tables of t, two decimals more than printed there)", () => {
  // t with 97.5 % below it: 12.706, 4.303, 2.571, 2.228, 1.980 for 1, 2, 5, 10, 120 degrees.
  it.each([
    [12.7062, 1],
    [4.30265, 2],
    [2.57058, 5],
    [2.22814, 10],
    [1.97993, 120],
  ])("t %f, df %d: 0.975 and, below, 0.025", (t, df) => {
    expect(studentShare(t, df)).toBeCloseTo(0.975, 5);
    expect(studentShare(-t, df)).toBeCloseTo(0.025, 5);
  });
  it("far out it is 0 and 1", () => {
    expect(studentShare(1e200, 3)).toBe(1);
    expect(studentShare(-1e200, 3)).toBe(0);
  });
});
