import { expect, it } from "vitest";
import { twoLevel } from "../../src/statistics/twoLevel";

const assumed = { shop: 0.22, group: 0.265, value: 0.12, worth: 4 };

/** The same posterior from the joint normal of (μ, θ₁, θ₂, …), its precision matrix solved by elimination. */
function byElimination(groups: readonly (readonly number[])[], scatter2: number) {
  const size = groups.length + 1;
  const between = assumed.group ** -2;
  const a = Array.from({ length: size }, () => Array<number>(size).fill(0));
  const right = Array<number>(size).fill(0);
  a[0]![0] = assumed.shop ** -2 + groups.length * between;
  groups.forEach((values, j) => {
    a[0]![j + 1] = a[j + 1]![0] = -between;
    a[j + 1]![j + 1] = between + values.length / scatter2;
    right[j + 1] = values.reduce((s, v) => s + v, 0) / scatter2;
  });
  const inverse = a.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let i = 0; i < size; i += 1) {
    const pivot = inverse[i]![i]!;
    inverse[i] = inverse[i]!.map((x) => x / pivot);
    for (let r = 0; r < size; r += 1)
      if (r !== i) inverse[r] = inverse[r]!.map((x, c) => x - inverse[r]![i]! * inverse[i]![c]!);
  }
  const covariance = inverse.map((row) => row.slice(size));
  const middle = covariance.map((row) => row.reduce((s, x, j) => s + x * right[j]!, 0));
  return { middle, variance: covariance.map((row, i) => row[i]!) };
}

it("is the posterior of the joint normal distribution, solved as a system of equations", () => {
  const groups = [[-0.2, -0.1, -0.32, -0.22, -0.15], [0.1], [0.05, 0.2, 0.02, -0.01]];
  const { shop, groups: levels, scatter2, df } = twoLevel(groups, assumed);
  const other = byElimination(groups, scatter2);
  expect(df).toBe(4 + 10 - 3);
  expect(shop).toBeCloseTo(other.middle[0]!, 12);
  levels.forEach(({ middle, variance }, j) => {
    expect(middle).toBeCloseTo(other.middle[j + 1]!, 12);
    expect(variance).toBeCloseTo(other.variance[j + 1]!, 12);
  });
});

it("without a value is what was assumed", () => {
  expect(twoLevel([], assumed)).toEqual({ shop: 0, groups: [], scatter2: 0.12 ** 2, df: 4 });
});
