import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bladeCost } from "../../src/cost/bladeCost";
import { cheapestBetween } from "../../src/cost/cheapestBetween";
import { bladeA, bladeB, blades, law, spread } from "./fixture";

const a = { ...bladeA, change: 10 };
const b = { ...bladeB, change: 10 };

describe("the saw hour values between which a blade is the cheapest", () => {
  it("own check value (no publication): A below 10.357 an hour, B above", () => {
    expect(cheapestBetween({ blade: a, all: [a, b] })).toEqual({ from: 0, to: expect.closeTo(10.35745423, 7) });
    expect(cheapestBetween({ blade: b, all: [a, b] })).toEqual({ from: expect.closeTo(10.35745423, 7), to: Infinity });
  });

  it("are all for a blade alone, none for one that another beats everywhere, shared by equals", () => {
    const worse = { ...a, price: 130, rate: 39 };
    const dearer = { ...a, price: 130 };
    const same = { ...a };
    expect(cheapestBetween({ blade: a, all: [a] })).toEqual({ from: 0, to: Infinity });
    expect(cheapestBetween({ blade: worse, all: [a, worse] })).toBeUndefined();
    expect(cheapestBetween({ blade: dearer, all: [a, dearer] })).toBeUndefined();
    expect(cheapestBetween({ blade: same, all: [a, same] })).toEqual({ from: 0, to: Infinity });
  });

  it("cover every value, and at each the blade that holds it costs no more than any other", () => {
    const offers = fc.array(
      fc.record({ blade: blades, change: spread(0.1, 60) }).map(({ blade, change }) => ({ ...blade, change })),
      { minLength: 2, maxLength: 6 },
    );
    const accepted = law(fc.record({ all: offers, w: spread(0.01, 1000) }), 61, ({ all, w }) => {
      const holders = all.filter((blade) => {
        const range = cheapestBetween({ blade, all });
        return range !== undefined && w >= range.from && w <= range.to;
      });
      const cost = (blade: (typeof all)[number]) => bladeCost({ blade, sawHourValue: w, change: blade.change });
      const least = Math.min(...all.map(cost));
      return holders.length >= 1 && holders.every((h) => cost(h) <= least * (1 + 1e-9));
    });
    expect(accepted).toBe(1);
  });
});

it("blades of the same hours: the cheaper one at every value, both where they cost the same but for rounding", () => {
  const free = { ...a, price: 0, kerf: 2 };
  expect(cheapestBetween({ blade: free, all: [free, { ...free, kerf: 2 * (1 - 1e-12) }] })).toEqual({
    from: 0,
    to: Infinity,
  });
  expect(cheapestBetween({ blade: free, all: [free, { ...free, kerf: 1.999 }] })).toBeUndefined();
});
