import { describe, expect, it } from "vitest";
import { cutCostWorking } from "../../src/cost/cutCostWorking";
import type { Shop } from "../../src/shop/shop";
import { shape, shopOf } from "./fixture";

/** Names, formulas and values of the working of a cut through 20 mm x 10 mm = 200 mm² at 400 mm²/min, 60 an hour, a blade of 100 for 20,000 mm². */
const of = (own: Partial<Shop>) =>
  cutCostWorking
    .steps({
      section: shape("rectangle 20x10"),
      rate: 400,
      hourlyCost: 60,
      price: 100,
      life: 20_000,
      shop: shopOf({ availability: 1, handlingMinutes: 3, changeMinutes: 10, breakInArea: 0, ...own }),
    })
    .map(({ name, formula, value }) => [name, formula, value] as const);
const named = (own: Partial<Shop>, name: string) => of(own).filter(([line]) => line === name);

describe("the working of a cut's cost (by hand)", () => {
  it("0.5 min of cutting at 1 a minute, 3 of handling, a hundredth of a blade of 100 and of its 10 minutes", () => {
    const value = (name: string) => named({}, name).map(([, , each]) => each);
    expect(value("paid minute")).toEqual([1]);
    expect(value("minutes of cutting")).toEqual([0.5]);
    expect(value("cutting")).toEqual([0.5]);
    expect(value("handling")).toEqual([3]);
    expect(value("blades a cut")).toEqual([0.01]);
    expect(value("blade wear")).toEqual([1]);
    expect(value("blade change")).toEqual([expect.closeTo(0.1, 9)]);
    expect(value("cost of the cut")).toEqual([expect.closeTo(4.6, 9)]);
  });

  it("one line of cutting: plain, or with a maximum feed of 5 mm/min the 2 min for 10 mm", () => {
    expect(named({}, "minutes of cutting")).toEqual([["minutes of cutting", "A / rate", 0.5]]);
    expect(named({ maximumFeed: 5 }, "minutes of cutting")).toEqual([
      ["minutes of cutting", "Σ travel / min(rate / L, maximum feed)", expect.closeTo(2, 9)],
    ]);
  });

  it("without a material price the chips cost nothing, and neither kerf nor prices of the bar are shown", () => {
    expect(named({ density: 8e-6, scrapPrice: 0.2 }, "bar turned into chips")).toEqual([
      ["bar turned into chips", "", 0],
    ]);
    for (const name of ["kerf", "density", "material price", "scrap price"])
      expect(named({ density: 8e-6, scrapPrice: 0.2, kerf: 2 }, name)).toEqual([]);
  });

  it("with one: 200 mm² x 2 mm x 8e-6 kg/mm³ x (1.2 - 0.2) a kg", () => {
    const own = { materialPrice: 1.2, density: 8e-6, scrapPrice: 0.2, kerf: 2 };
    expect(named(own, "bar turned into chips")).toEqual([
      ["bar turned into chips", "A × kerf × density × (bar − scrap)", expect.closeTo(0.0032, 12)],
    ]);
    expect(["kerf", "density", "material price", "scrap price"].map((name) => named(own, name)[0]![2])).toEqual([
      2, 8e-6, 1.2, 0.2,
    ]);
  });
});
