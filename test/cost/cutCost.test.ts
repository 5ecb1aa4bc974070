import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutCost } from "../../src/cost/cutCost";
import { defaultShop } from "../../src/shop/defaultShop";
import { law, refused, relative, shape, shopOf, spread } from "./fixture";

/** 80 cm²: a flat of 100 × 80 mm. */
const flat = shape("flat 100x80 mm");
const known = { section: flat, rate: 4000, hourlyCost: 63, price: 180, life: 40000 * 100 };
const sum = ({ cost, ...parts }: ReturnType<typeof cutCost>): number =>
  Object.values(parts).reduce((s, p) => s + p, 0) - cost;

describe("cost of a cut: own check values, exact (no publication): 80 cm² at 40 cm²/min, 63 an hour, blade 180 for 40000 cm²", () => {
  const cost = cutCost({
    ...known,
    shop: shopOf({
      handlingMinutes: 0.7,
      changeMinutes: 12,
      kerf: 1.6,
      density: 7.85e-6,
      materialPrice: 1.2,
      scrapPrice: 0.25,
      breakInArea: 3000 * 100,
      breakInFeedShare: 0.5,
    }),
  });

  it("2 min of cutting and 0.7 min beside it: 2.1 and 0.735", () => {
    expect(cost.cutting).toBeCloseTo(2.1, 12);
    expect(cost.handling).toBeCloseTo(0.735, 12);
  });

  it("blade wear 0.36; blade change 12 min × 80 / 40000 at 63 an hour, 0.0252", () => {
    expect(cost.bladeWear).toBeCloseTo(0.36, 12);
    expect(cost.bladeChange).toBeCloseTo(0.0252, 12);
  });

  it("kerf 1.6 mm of 7.85 g/cm³ at 1.20 less 0.25 per kg: 0.095456", () => {
    expect(cost.kerf).toBeCloseTo(0.095456, 12);
  });

  it("break-in, 0.3 of 4 m² at half the feed, makes the mean rate 0.93023 of the rate: own check value", () => {
    const [minutes, extra] = [cost.cutting, cost["break-in"]].map((part) => (part * 60) / 63);
    expect(minutes! / (minutes! + extra!)).toBeCloseTo(0.93023255814, 9);
  });

  it("break-in at 0.4 of the feed: 0.3 m² at 40 cm²/min take 75 min at full feed and 112.5 more, of which 80 / 40000 fall on this cut: 0.225 min, 0.23625 of money (own check value)", () => {
    const { "break-in": breakIn } = cutCost({ ...known, shop: shopOf({ breakInArea: 3e5, breakInFeedShare: 0.4 }) });
    expect(breakIn).toBeCloseTo(0.23625, 12);
  });

  it("P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.7 (companion read): 10 min change, 240 min life, 2 min cut: 0.083 min", () => {
    const { bladeChange } = cutCost({
      ...known,
      rate: 4000,
      life: 240 * 4000,
      hourlyCost: 60,
      shop: shopOf({ changeMinutes: 10 }),
    });
    expect(bladeChange).toBeCloseTo(0.08333333333333333, 9);
  });

  it("an hour that the saw runs costs the paid hour over the availability (definition)", () => {
    const half = cutCost({ ...known, shop: shopOf({ handlingMinutes: 0.7, changeMinutes: 12, availability: 0.5 }) });
    expect(half.cutting).toBeCloseTo(2 * 2.1, 12);
    expect(half.handling).toBeCloseTo(2 * 0.735, 12);
    expect(half.bladeChange).toBeCloseTo(2 * 0.0252, 12);
    expect(half.bladeWear).toBeCloseTo(0.36, 12);
  });
});

describe("every part that the shop does not name", () => {
  it("is 0: cutting and blade wear are left", () => {
    const { cost, cutting, bladeWear, ...rest } = cutCost({ ...known, shop: defaultShop });
    expect(Object.values(rest)).toEqual([0, 0, 0, 0]);
    expect(cost).toBe(cutting + bladeWear);
  });
});

describe("refusals", () => {
  it("a material price without a density, a break-in area above the life", () => {
    expect(refused(() => cutCost({ ...known, shop: shopOf({ materialPrice: 1 }) }))).toEqual({
      reason: "invalid",
      parameter: "settings",
      problem: "{parameter} give a Material price but no Density: the kerf's mass is not known",
    });
    expect(refused(() => cutCost({ ...known, shop: shopOf({ breakInArea: 5e6 }) }))).toEqual({
      reason: "invalid",
      parameter: "life",
      problem: "{parameter} is less than the Break-in area of the shop block",
    });
  });

  it("a maximum feed holds the cutting back: 80 mm of height at 20 mm/min are 4 min", () => {
    expect(cutCost({ ...known, shop: shopOf({ maximumFeed: 20 }) }).cutting).toBeCloseTo(
      (63 / 60) * Math.max(flat.profile().height / 20, 2),
      9,
    );
  });
});

describe("laws", () => {
  const draws = fc.record({
    rate: spread(100, 1e5),
    hourlyCost: spread(1, 500),
    price: spread(10, 5000),
    life: spread(1e5, 1e8),
    change: spread(0.1, 60),
    handling: spread(0.1, 30),
    breakIn: spread(1e-3, 1),
    material: spread(0.1, 50),
    scrap: fc.double({ min: 0, max: 1, noNaN: true }),
    k: spread(1e-3, 1e3),
  });
  const cost = (
    d: {
      rate: number;
      hourlyCost: number;
      price: number;
      life: number;
      change: number;
      handling: number;
      breakIn: number;
      material: number;
      scrap: number;
    },
    k = 1,
    longer = 1,
  ) =>
    cutCost({
      section: flat,
      rate: d.rate,
      hourlyCost: k * d.hourlyCost,
      price: k * d.price,
      life: d.life * longer,
      shop: shopOf({
        changeMinutes: d.change,
        handlingMinutes: d.handling,
        breakInArea: d.breakIn * d.life,
        density: 7.85e-6,
        materialPrice: k * d.material,
        scrapPrice: k * d.material * d.scrap,
      }),
    });

  it("the parts sum to the cost to 1e-12; the cost falls as the life rises; another currency is the same number of it", () => {
    const accepted = law(draws, 81, (d) => {
      const one = cost(d);
      return (
        Math.abs(sum(one)) <= 1e-12 * one.cost &&
        cost(d, 1, 1.5).cost < one.cost &&
        relative(cost(d, d.k).cost, d.k * one.cost) < 1e-12
      );
    });
    expect(accepted).toBe(1);
  });
});
