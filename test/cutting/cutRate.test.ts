import { expect, it } from "vitest";
import { cutRate } from "../../src/cutting/cutRate";
import { inch2, predict, work } from "./fixture";

it("is the nominal rate of the prediction (17-4PH, 7 in round: 2.0 to 2.5 in²/min, common practice, no source)", () => {
  const rate = cutRate({ ...work("round 7", "17-4PH"), pitch: undefined });
  expect(rate).toBe(predict("round 7", "17-4PH").rate);
  expect(rate / inch2).toBeGreaterThan(2);
  expect(rate / inch2).toBeLessThan(2.5);
});
