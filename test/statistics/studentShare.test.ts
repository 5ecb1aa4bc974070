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
