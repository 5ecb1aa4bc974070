import { expect, it } from "vitest";
import { cutAtFactor } from "../../src/records/cutAtFactor";
import { predictCut } from "../../src/cutting/predictCut";
import { work } from "../cutting/fixture";

it("is the cut of a shop with that rate factor, whatever limits it (CUTDATA, factor in the shop block)", () => {
  const saws = [{}, { motorPower: 1500, bandWidth: 34, maximumFeed: 60 }, { feedMode: "constant feed" as const }];
  for (const size of ["round 7", "tube 6x0.5", "W12x50", "flat 6x1"])
    for (const saw of saws)
      for (const factor of [0.3, 0.8, 1, 1.4, 6]) {
        const one = { ...work(size, "304", "bi-metal", saw), pitch: undefined };
        const expected = predictCut({ ...one, shop: { ...one.shop, rateFactor: factor } }).run;
        expect(cutAtFactor(one)(factor).minutes / expected.minutes, `${size} ${factor}`).toBeCloseTo(1, 9);
      }
});
