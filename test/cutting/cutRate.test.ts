import { expect, it } from "vitest";
import { InputError, orRefusal } from "../../src/errors";
import { cutRate } from "../../src/cutting/cutRate";
import { predictCut } from "../../src/cutting/predictCut";
import { work } from "./fixture";

const saws = [
  {},
  { motorPower: 750 },
  { maximumFeed: 20 },
  { bandWidth: 20 },
  { bandWidth: 20, motorPower: 1500, feedMode: "constant feed" as const },
  { minimumBandSpeed: 200_000 },
];

it("is the rate of the prediction, or its very refusal", () => {
  let refused = 0;
  for (const size of ["round 60 mm", "flat 200x20 mm", "tube 150x8 mm", "HEB 200", "round 50 mm bundle 2x3"])
    for (const saw of saws)
      for (const grade of ["A36", "304", "D2"]) {
        const one = { ...work(size, grade, "bi-metal", saw), pitch: undefined };
        const [rate, whole] = [orRefusal(() => cutRate(one)), orRefusal(() => predictCut(one))];
        if (whole instanceof InputError) expect(rate).toEqual(whole);
        else expect(rate).toEqual({ rate: whole.rate });
        refused += whole instanceof InputError ? 1 : 0;
      }
  expect(refused).toBeGreaterThan(10);
});
