import { expect, it } from "vitest";
import { sampleOf } from "../../src/statistics/sampleOf";

it("is what R gives: mean 3.42, standard deviation 0.6379655163 of 3.1 3.6 4.4 2.7 3.3", () => {
  const { count, mean, variance } = sampleOf([3.1, 3.6, 4.4, 2.7, 3.3]);
  expect(count).toBe(5);
  expect(mean).toBeCloseTo(3.42, 12);
  expect(Math.sqrt(variance)).toBeCloseTo(0.6379655163, 9);
  expect(sampleOf([7])).toEqual({ count: 1, mean: 7, variance: 0 });
});
