import { expect, it } from "vitest";
import { rateSpread } from "../../src/records/rateSpread";

it("is exp(1.3722·√(0.02² + 0.12²)) with ten degrees of freedom (t from a table)", () => {
  const fit = { shop: 0, groups: [{ middle: 0, variance: 0.02 ** 2 }], scatter2: 0.12 ** 2, df: 10 };
  expect(rateSpread(fit, 0)).toBeCloseTo(Math.exp(1.3722 * Math.hypot(0.02, 0.12)), 5);
});
