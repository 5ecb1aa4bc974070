import { describe, expect, it } from "vitest";
import type { Life } from "../../src/statistics/weibullFit";
import { logRankScores } from "../../src/statistics/logRankScores";
import { lives } from "./lives";

/** Observed less expected ends of the second group, squared over its hypergeometric variance, area by area. */
const variance = (first: readonly Life[], second: readonly Life[]): number => {
  const times = [...new Set([...first, ...second].filter((l) => l.ended).map((l) => l.area))];
  return times.reduce((sum, at) => {
    const [n1, n2] = [first, second].map((g) => g.filter((l) => l.area >= at).length) as [number, number];
    const [d, n] = [[...first, ...second].filter((l) => l.ended && l.area === at).length, n1 + n2];
    return n < 2 ? sum : sum + (d * n1 * n2 * (n - d)) / (n * n * (n - 1));
  }, 0);
};
const chi2 = (first: readonly Life[], second: readonly Life[]): number => {
  const excess = logRankScores([...first, ...second])
    .slice(first.length)
    .reduce((a, b) => a + b, 0);
  return excess ** 2 / variance(first, second);
};

describe("log-rank scores add up to R's survdiff", () => {
  it("survival::aml: 3.396388699", () => {
    expect(chi2(lives("9 13 18 23 31 34 48", "13 28 45 161"), lives("5 5 8 8 12 23 27 30 33 43 45", "16"))).toBeCloseTo(
      3.396388699,
      7,
    );
  });
  it("MASS::gehan (Freireich, 6-MP): 16.79294099", () => {
    expect(
      chi2(
        lives("6 6 6 7 10 13 16 22 23", "6 9 10 11 17 19 20 25 32 32 34 35"),
        lives("1 1 2 2 3 4 4 5 5 8 8 8 8 11 11 12 12 15 17 22 23"),
      ),
    ).toBeCloseTo(16.79294099, 6);
  });
  it("sums to nothing over the pool", () => {
    expect(logRankScores(lives("3.1 3.6 4.4 2.7", "2 9")).reduce((a, b) => a + b, 0)).toBeCloseTo(0, 12);
  });
});
