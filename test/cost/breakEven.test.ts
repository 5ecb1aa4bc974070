import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Blade } from "../../src/cost/blade";
import { bladeCost } from "../../src/cost/bladeCost";
import { bladeHours } from "../../src/cost/bladeHours";
import { breakEven as core } from "../../src/cost/breakEven";
import { once } from "../../src/once";
import { bladeA, bladeB, blades, law, pairs, refused, relative, spread } from "./fixture";

/** Kerf left out, where a test is not about it. */
const breakEven = (input: Omit<Parameters<typeof core>[0], "currentKerfCost" | "offerKerfCost">) =>
  core({ currentKerfCost: 0, offerKerfCost: 0, ...input });

const at60 = once(() => breakEven({ current: bladeA, offer: bladeB, sawHourValue: 60, change: 10 }));
const priceAt = (sawHourValue: number): unknown =>
  breakEven({ current: bladeA, offer: bladeB, sawHourValue, change: 10 }).price;

describe("break-even: own check values (no publication): A 120, 30000 cm², 40 cm²/min; B 260, 50000, 55; change 10 min; 60 an hour", () => {
  it.each([
    ["price", 547.5757576],
    ["life", 24211.95652],
    ["rate", 41.78272981],
    ["sawHourValue", 10.35745423],
  ] as const)("%s %s", (which, value) => {
    expect(relative(at60()[which] as number, value)).toBeLessThan(1e-9);
  });

  it("cost per m² 293.33 and 235.82: saving 57.52", () => {
    expect(10000 * (at60().saving as number)).toBeCloseTo(293.3333333 - 235.8181818, 6);
  });

  it("the least rate 34.0909 and the least life 9204.545 are where no life, no rate is enough", () => {
    const life = (rate: number) =>
      breakEven({ current: bladeA, offer: { ...bladeB, rate }, sawHourValue: 60, change: 10 }).life;
    expect(refused(() => life(34.09)).problem).toMatch(/no life is long enough/);
    expect(life(34.1)).toBeGreaterThan(1e7);
    const rate = (l: number) =>
      breakEven({ current: bladeA, offer: { ...bladeB, life: l }, sawHourValue: 60, change: 10 }).rate;
    expect(refused(() => rate(9204.5)).problem).toMatch(/no rate is fast enough/);
    expect(rate(9204.6)).toBeGreaterThan(1e4);
  });

  it("what a saw hour is worth decides: 200 when idle hours are free, 547.58 at 60, 831.12 at what the waiting work earns", () => {
    expect(priceAt(0)).toBeCloseTo(200, 6);
    // Work sold at 0.06 per cm² with 0.01 of other cost earns this much per saw hour cutting with A, and with B:
    const earns = ({ price, life, rate }: Blade) =>
      (0.06 - 0.01 - price / life) / bladeHours({ blade: { life, rate }, change: 10 });
    expect(earns(bladeA)).toBeCloseTo(108.9473684, 6);
    expect(earns(bladeB)).toBeCloseTo(146.231454, 6);
    expect(priceAt(earns(bladeA))).toBeCloseTo(831.1244019, 6);
  });

  it("C, B at rate 25, would have to cost -543.33: it costs more even if the blade were free", () => {
    const { price, verdict } = breakEven({
      current: bladeA,
      offer: { ...bladeB, rate: 25 },
      sawHourValue: 60,
      change: 10,
    });
    expect(refused(() => price)).toEqual({
      reason: "none",
      parameter: "",
      problem: "never: the offer costs more even if the blade were free",
    });
    expect((verdict as readonly unknown[])[0]).toBe("The current blade wins at every saw hour value.");
  });

  it("the cell solved for may be open; what needs it is refused by its name", () => {
    const open = breakEven({ current: bladeA, offer: { ...bladeB, price: undefined }, sawHourValue: 60, change: 10 });
    expect(open.price).toBe(at60().price);
    for (const which of ["life", "rate", "sawHourValue", "saving", "verdict"] as const)
      expect(refused(() => open[which]).parameter).toBe("offer price");
    expect(
      breakEven({ current: bladeA, offer: { ...bladeB, life: undefined }, sawHourValue: 60, change: 10 }).life,
    ).toBe(at60().life);
    expect(
      refused(
        () =>
          breakEven({ current: bladeA, offer: { ...bladeB, life: undefined }, sawHourValue: 60, change: 10 }).saving,
      ).parameter,
    ).toBe("offer life");
    expect(
      refused(
        () =>
          breakEven({ current: bladeA, offer: { ...bladeB, rate: undefined }, sawHourValue: 60, change: 10 }).verdict,
      ).parameter,
    ).toBe("offer rate");
  });
});

describe("break-even, put back", () => {
  const draws = fc.record({ pair: pairs, w: spread(1, 500), change: spread(0.1, 60) });
  const costOf = (blade: Blade, w: number, change: number) => bladeCost({ blade, sawHourValue: w, change });

  it.each(["price", "life", "rate"] as const)("%s costs the same per area to 1e-12", (which) => {
    const accepted = law(draws, 31, ({ pair: { current, offer }, w, change }) => {
      const value = breakEven({ current, offer, sawHourValue: w, change })[which];
      if (typeof value !== "number") return undefined;
      const cost = costOf(current, w, change);
      const part = {
        price: value / offer.life,
        life: (offer.price + (w * change) / 60) / value,
        rate: w / (60 * value),
      }[which];
      // A part under a thousandth of the cost is a difference of nearly equal numbers.
      if (part < cost / 1000) return undefined;
      return relative(cost, costOf({ ...offer, [which]: value }, w, change)) < 1e-12;
    });
    expect(accepted).toBeGreaterThan(0.5);
  });

  it("saw hour value costs the same per area to 1e-12, and the verdict says on which side the offer wins", () => {
    const accepted = law(draws, 32, ({ pair: { current, offer }, change }) => {
      const { sawHourValue: value, verdict } = breakEven({ current, offer, sawHourValue: 60, change });
      if (typeof value !== "number") return undefined;
      const [wear, hours] = [
        offer.price / offer.life / (current.price / current.life) - 1,
        bladeHours({ blade: offer, change }) / bladeHours({ blade: current, change }) - 1,
      ];
      if (Math.min(Math.abs(wear), Math.abs(hours)) < 1e-3) return undefined;
      const wins = costOf(offer, value * 1.5, change) < costOf(current, value * 1.5, change);
      const said = (verdict as unknown as readonly { readonly template: string }[])[0]!.template.startsWith(
        "The offer wins",
      );
      return (
        value > 0 && wins === said && relative(costOf(current, value, change), costOf(offer, value, change)) < 1e-12
      );
    });
    expect(accepted).toBeGreaterThan(0.3);
  });
});

describe("kerf", () => {
  it("own cost of the offer with its kerf, put back at each break-even value (500 pairs)", () => {
    law(fc.record({ current: blades, offer: blades, k1: spread(1e-4, 0.1), k2: spread(1e-4, 0.1) }), 500, (draw) => {
      const { current, offer, k1, k2 } = draw;
      const found = core({ current, offer, sawHourValue: 60, change: 8, currentKerfCost: k1, offerKerfCost: k2 });
      const cost = ({ price, life, rate }: typeof current, kerf: number, w = 60): number =>
        w / (60 * rate) + (price + (w * 8) / 60) / life + kerf;
      const target = cost(current, k1);
      for (const key of ["price", "life", "rate"] as const) {
        const value = found[key];
        if (typeof value === "number")
          expect(relative(cost({ ...offer, [key]: value }, k2), target)).toBeLessThan(1e-9);
      }
      if (typeof found.sawHourValue === "number")
        expect(relative(cost(current, k1, found.sawHourValue), cost(offer, k2, found.sawHourValue))).toBeLessThan(1e-9);
      expect(found.saving).toBeCloseTo(target - cost(offer, k2), 9);
      return true;
    });
  });
  it("the same blade but a thinner kerf is ahead at every value; the same wear is a tie at 0 (by hand)", () => {
    const same = { current: bladeA, offer: bladeA, sawHourValue: 60, change: 0, currentKerfCost: 0.02 };
    expect((core({ ...same, offerKerfCost: 0.01 }).verdict as readonly unknown[])[0]).toBe(
      "The offer wins at every saw hour value.",
    );
    const faster = { ...bladeA, rate: 2 * bladeA.rate };
    const { sawHourValue, verdict } = core({ ...same, offer: faster, offerKerfCost: 0.02 });
    expect(sawHourValue).toBe(0);
    expect((verdict as readonly unknown[])[0]).toBe("Equal at a saw hour value of 0; above it the offer wins.");
  });
});

it("the verdict at a value whole: saves, costs more, equal (by hand)", () => {
  // 100/10000 + 60/(60·10) = 0.11 in use; offers 0.05 + p/20000: p = 0 saves 0.06, p = 2000 costs 0.04 more.
  const current = { price: 100, life: 10_000, rate: 10 };
  const at = (price: number) => {
    const { verdict } = breakEven({ current, offer: { price, life: 20_000, rate: 20 }, sawHourValue: 60, change: 0 });
    return verdict;
  };
  const money = (number: number) =>
    expect.objectContaining({ number: expect.closeTo(number, 9) as number, quantity: "money" }) as unknown;
  const texts = (price: number) => JSON.stringify(at(price));
  expect(texts(200)).toContain(
    "At {value} a saw hour the offer saves {saving} per unit of area, {share} %; it pays up to a price of {price}.",
  );
  expect(texts(2000)).toContain(
    "At {value} a saw hour the offer costs {saving} more per unit of area, {share} %; it pays up to a price of {price}.",
  );
  expect(texts(1200)).toContain("At {value} a saw hour both cost the same.");
  const facts = (price: number) =>
    [at(price)].flat().find((t) => typeof t !== "string" && "saving" in (t as { facts: object }).facts);
  expect(facts(200)).toMatchObject({ facts: { value: money(60), saving: money(0.05), price: money(1200) } });
  expect(facts(2000)).toMatchObject({ facts: { value: money(60), saving: money(0.04), price: money(1200) } });
});
