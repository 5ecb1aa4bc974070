import { describe, expect, it } from "vitest";
import { breakEvenHourValue } from "../../src/cost/breakEvenHourValue";
import { bladeA, bladeB, refused } from "./fixture";

const of = (offer: typeof bladeA) => breakEvenHourValue({ current: bladeA, offer, change: 10 });

describe("the five verdicts (derived: two straight lines)", () => {
  it("the offer wins from a saw hour value up", () => {
    expect(of(bladeB).verdict).toMatchObject({
      template: "The offer wins where a saw hour is worth more than {value}.",
    });
    expect(of(bladeB).sawHourValue).toBeCloseTo(10.35745423, 7);
  });

  it("the current blade wins from one up", () => {
    const { verdict, sawHourValue } = breakEvenHourValue({ current: bladeB, offer: bladeA, change: 10 });
    expect(verdict).toMatchObject({
      template: "The current blade wins where a saw hour is worth more than {value}; below that the offer does.",
    });
    expect(sawHourValue).toBeCloseTo(10.35745423, 7);
  });

  it.each([
    ["cheaper and faster", { price: 100, life: 30000, rate: 50 }, "The offer wins at every saw hour value."],
    ["cheaper, as fast", { price: 100, life: 30000, rate: 40 }, "The offer wins at every saw hour value."],
    ["dearer and slower", { price: 140, life: 30000, rate: 30 }, "The current blade wins at every saw hour value."],
    ["dearer, as fast", { price: 140, life: 30000, rate: 40 }, "The current blade wins at every saw hour value."],
    ["equal", { price: 120, life: 30000, rate: 40 }, "Both blades cost the same at every saw hour value."],
    [
      "equal but for rounding",
      { price: 120 * (1 + 1e-13), life: 30000, rate: 40 * (1 - 1e-13) },
      "Both blades cost the same at every saw hour value.",
    ],
  ])("%s: no saw hour value, and the reason", (_, offer, verdict) => {
    expect(of(offer).verdict).toBe(verdict);
    expect(refused(() => of(offer).sawHourValue)).toEqual({ reason: "none", parameter: "", problem: verdict });
  });
});
