import { expect, it } from "vitest";
import { outliers } from "../../src/records/outliers";

const of = (group: string, ...values: number[]) => values.map((value) => ({ group, value }));

it("are beyond 3.5 scaled median deviations: the last of 10/12 … 25/60 (worked by hand: ln 0.5 from the median, deviation 0.0426)", () => {
  // A deviation under 0.05 counts as 0.05: 3.5 × 1.4826 × 0.05 = 0.2595.
  const logs = [10 / 12, 12 / 14, 15 / 19, 20 / 23, 25 / 60].map(Math.log);
  const [a, b, c, d, last] = outliers(of("steel", ...logs));
  expect([a, b, c, d]).toEqual([undefined, undefined, undefined, undefined]);
  expect(last).toBeCloseTo(Math.log(0.5), 12);
  expect(outliers(of("steel", 0, 0, 0, 0.2594))[3]).toBeUndefined();
  expect(outliers(of("steel", 0, 0, 0, 0.2596))[3]).toBeCloseTo(0.2596, 12);
});
it("are sought among all values while a group has fewer than four", () => {
  const values = [...of("steel", 0, 0.01, 0.02, -0.01, 0.03), ...of("titanium", 1.2)];
  expect(outliers(values)[5]).toBeCloseTo(1.185, 9);
  expect(outliers([...of("steel", 0, 0.01, 0.02), ...of("titanium", 1.2, 1.21, 1.19, 1.2)]).slice(3)).toEqual([
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
  expect(outliers([])).toEqual([]);
});
