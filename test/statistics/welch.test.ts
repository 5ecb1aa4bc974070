import { expect, it } from "vitest";
import { studentQuantile } from "../../src/statistics/studentQuantile";
import { studentShare } from "../../src/statistics/studentShare";
import { sampleOf } from "../../src/statistics/sampleOf";
import { welch } from "../../src/statistics/welch";

it("R t.test on logs, A 3.1 3.6 4.4 2.7 3.3, B 4.6 5.9 5.1 4.4: ratio 1.472174392, 1.150524852 to 1.88374674, p 0.007593346287", () => {
  const { difference, error, df } = welch(
    sampleOf([3.1, 3.6, 4.4, 2.7, 3.3].map(Math.log)),
    sampleOf([4.6, 5.9, 5.1, 4.4].map(Math.log)),
  );
  const half = studentQuantile(0.975, df) * error;
  expect(Math.exp(difference)).toBeCloseTo(1.472174392, 8);
  expect(Math.exp(difference - half)).toBeCloseTo(1.150524852, 7);
  expect(Math.exp(difference + half)).toBeCloseTo(1.88374674, 7);
  expect(2 * studentShare(-difference / error, df)).toBeCloseTo(0.007593346287, 8);
});
