import { expect, it } from "vitest";
import { studentQuantile } from "../../src/statistics/studentQuantile";

it.each([
  [0.9, 1, 3.0777],
  [0.9, 4, 1.5332],
  [0.9, 10, 1.3722],
  [0.9, 1e6, 1.28155],
  [0.975, 4, 2.7764],
  [0.95, 12, 1.7823],
])("is what tables of Student's t print: %f with %i degrees of freedom", (share, df, t) => {
  expect(studentQuantile(share, df)).toBeCloseTo(t, 4);
});

it("gives the 95 %% interval of a mean that R prints: 3.1 3.6 4.4 2.7 3.3 (R t.test: 2.627861186 to 4.212138814)", () => {
  const half = (studentQuantile(0.975, 4) * 0.6379655163) / Math.sqrt(5);
  expect(3.42 - half).toBeCloseTo(2.627861186, 7);
  expect(3.42 + half).toBeCloseTo(4.212138814, 7);
});
