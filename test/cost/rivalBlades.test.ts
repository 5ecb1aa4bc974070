import fc from "fast-check";
import { expect, it } from "vitest";
import { bladeCost } from "../../src/cost/bladeCost";
import { cheapestBetween } from "../../src/cost/cheapestBetween";
import { rivalBlades } from "../../src/cost/rivalBlades";
import { blades } from "./fixture";

const offers = fc.array(
  fc.tuple(blades, fc.integer({ min: 0, max: 30 })).map(([blade, change]) => ({ ...blade, change })),
  { minLength: 1, maxLength: 12 },
);

it("at every saw hour value one of them is the cheapest of all (definition)", () => {
  fc.assert(
    fc.property(offers, fc.double({ min: 0, max: 500, noNaN: true }), (all, sawHourValue) => {
      const least = (list: typeof all) =>
        Math.min(...list.map((blade) => bladeCost({ blade, sawHourValue, change: blade.change })));
      expect(least(rivalBlades(all) as typeof all) / least(all)).toBeCloseTo(1, 9);
    }),
  );
});

it("bound where any blade is the cheapest as all of them do", () => {
  fc.assert(
    fc.property(offers, (all) => {
      for (const blade of all)
        expect(cheapestBetween({ blade, all: rivalBlades(all) })).toEqual(cheapestBetween({ blade, all }));
    }),
  );
});
