import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { payback as core } from "../../src/cost/payback";
import { bladeA, bladeB, blades, law, refused, relative, spread } from "./fixture";

/** Kerf left out, where a test is not about it. */
const payback = (input: Omit<Parameters<typeof core>[0], "currentKerfCost" | "offerKerfCost">) =>
  core({ currentKerfCost: 0, offerKerfCost: 0, ...input });

const plan = {
  current: bladeA,
  offer: bladeB,
  sawHourValue: 60,
  oneOffCost: 500,
  areaPerMonth: 20000,
  freedHoursWanted: 10,
  idleHourValue: 0,
  change: 10,
};

describe("payback", () => {
  it("own check value (no publication): 500 once, 20000 cm² a month, work for every freed hour: 86933.61 cm², 4.34668 months", () => {
    const { months, area } = payback(plan);
    expect(relative(months, 4.346680717)).toBeLessThan(1e-9);
    expect(relative(area, 86933.61433)).toBeLessThan(1e-9);
  });

  it("Panneerselvam, Engineering Economics, Ex. 1.1 (companion read): fixed 2,000,000, variable 100, price 200: even at 20000 units", () => {
    // A unit is an area of 1; the fixed cost comes back through 100 saved on each, with saw hours worth nothing.
    const { area } = payback({
      ...plan,
      current: { price: 200e3, life: 1000, rate: 1 },
      offer: { price: 100e3, life: 1000, rate: 1 },
      sawHourValue: 0,
      oneOffCost: 2e6,
    });
    expect(area).toBeCloseTo(20000, 9);
  });

  it("counts freed hours only as far as work waits for them, the rest at the idle value", () => {
    // By hand: 2.317 hours are freed a month (20000 × (1/2400 + 10/1.8e6 − 1/3300 − 10/3e6)); blades cost 24 more.
    const freed = 20000 * (1 / 2400 + 10 / 1.8e6 - 1 / 3300 - 10 / 3e6);
    expect(payback({ ...plan, freedHoursWanted: 1 }).months).toBeCloseTo(500 / (60 - 24), 9);
    expect(payback({ ...plan, freedHoursWanted: 1, idleHourValue: 20 }).months).toBeCloseTo(
      500 / (60 + 20 * (freed - 1) - 24),
      9,
    );
    expect(payback({ ...plan, freedHoursWanted: 99 }).months).toBe(payback({ ...plan, freedHoursWanted: 999 }).months);
  });

  it("has no answer, with the reason, where nothing is saved", () => {
    expect(refused(() => payback({ ...plan, freedHoursWanted: 0 }))).toEqual({
      reason: "none",
      parameter: "",
      problem: "never as things are: the offer frees {freed} a month, and work waits for {wanted} of them",
    });
    expect(refused(() => payback({ ...plan, offer: bladeA })).problem).toBe("never: both blades cost the same");
    expect(refused(() => payback({ ...plan, current: bladeB, offer: bladeA })).problem).toBe(
      "never: the offer costs more than the current blade",
    );
    expect(refused(() => payback({ ...plan, sawHourValue: 0 })).problem).toBe(
      "never: the offer costs more than the current blade",
    );
    expect(refused(() => payback({ ...plan, idleHourValue: 61 }))).toMatchObject({
      reason: "invalid",
      parameter: "idleHourValue",
    });
  });

  it("a slower offer pays in full for the hours it takes", () => {
    const slow = { price: 60, life: 30000, rate: 38 };
    const lost = 20000 * (1 / (60 * 38) - 1 / (60 * 40));
    expect(payback({ ...plan, offer: slow, freedHoursWanted: 0 }).months).toBeCloseTo(
      500 / (20000 * (60 / 30000) - 60 * lost),
      9,
    );
  });

  it("with work for freed hours is never longer than without; in another currency takes the same months", () => {
    const draws = fc.record({
      current: blades,
      offer: blades,
      w: spread(1, 500),
      idle: fc.double({ min: 0, max: 1, noNaN: true }),
      area: spread(100, 1e6),
      once: spread(10, 1e5),
      wanted: spread(0.01, 500),
      k: spread(1e-3, 1e3),
    });
    const months = (run: () => { readonly months: number }): number => {
      try {
        return run().months;
      } catch {
        return Infinity;
      }
    };
    const accepted = law(draws, 41, ({ current, offer, w, idle, area, once, wanted, k }) => {
      const call = (scale: number, hours: number) =>
        months(() =>
          payback({
            current: { ...current, price: scale * current.price },
            offer: { ...offer, price: scale * offer.price },
            sawHourValue: scale * w,
            idleHourValue: scale * w * idle,
            areaPerMonth: area,
            oneOffCost: scale * once,
            freedHoursWanted: hours,
            change: 10,
          }),
        );
      const withWork = call(1, wanted);
      if (withWork === Infinity) return undefined;
      return withWork <= call(1, 0) && relative(withWork, call(k, wanted)) < 1e-6;
    });
    expect(accepted).toBeGreaterThan(0.3);
  });
});

it("the hours of the reason are hours", () => {
  let refusal: unknown;
  try {
    payback({ ...plan, freedHoursWanted: 0 });
  } catch (error) {
    refusal = error;
  }
  const freed = 20000 * (1 / 2400 + 10 / 1.8e6 - 1 / 3300 - 10 / 3e6);
  expect(refusal).toMatchObject({
    facts: {
      freed: { number: expect.closeTo(freed, 9) as number, quantity: "hours" },
      wanted: { number: 0, quantity: "hours" },
    },
  });
});
