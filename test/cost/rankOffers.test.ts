import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { OfferedBlade } from "../../src/cost/offeredBlade";
import { InputError } from "../../src/errors";
import { rankOffers } from "../../src/cost/rankOffers";
import { once } from "../../src/once";
import { bladeA, bladeB, blades, law, refused, relative, spread } from "./fixture";

const offered = (name: string, blade: typeof bladeA, own: Partial<OfferedBlade> = {}): OfferedBlade => ({
  name,
  ...blade,
  change: 10,
  rebate: 0,
  rebateFrom: 1,
  kerf: 0,
  ...own,
});
const a = offered("A", bladeA);
const b = offered("B", bladeB);
/** Rows of offers that can all be read. */
const rank = (offers: readonly OfferedBlade[], sawHourValue = 60, areaPerMonth: number | undefined = 20000) =>
  rankOffers({ offers, sawHourValue, areaPerMonth }).map((row) => ({
    ...row,
    costPerArea: row.costPerArea!,
    saving: row.saving as number,
  }));

describe("offers: own check values (no publication), as for the break-even of A and B", () => {
  const rows = once(() => rank([a, b]));

  it("B is first: 235.82 per m² against 293.33, break-even price 547.58, cheapest above 10.357 an hour", () => {
    const [first, second] = rows();
    expect([first!.rank, first!.name, second!.rank, second!.name]).toEqual([1, "B", 2, "A"]);
    expect(10000 * first!.costPerArea).toBeCloseTo(235.8181818, 6);
    expect(first!.costPerMonth).toBeCloseTo(2 * 235.8181818, 6);
    expect(10000 * first!.saving).toBeCloseTo(293.3333333 - 235.8181818, 6);
    expect(first!.breakEvenPrice).toBeCloseTo(547.5757576, 6);
    expect(first!.bestFrom).toEqual({
      template: "{value}",
      facts: { value: { number: expect.closeTo(10.35745423, 6), quantity: "moneyPerHour" } },
    });
    expect(first!.bestTo).toBe("no limit");
    expect(second!.bestTo).toEqual(first!.bestFrom);
  });

  it("the winner may fall to a life of 24212 or a rate of 41.78 before the second is as cheap", () => {
    const [first, second] = rows();
    expect(first!.safetyMargin).toEqual({
      template: "stays first down to life {life}, or rate {rate}",
      facts: {
        life: { number: expect.closeTo(24211.95652, 4), quantity: "ownArea", digits: 3 },
        rate: { number: expect.closeTo(41.78272981, 6), quantity: "ownArea", digits: 3 },
      },
    });
    expect(second!.safetyMargin).toBe("");
  });

  it("the first of the table saves nothing against itself and breaks even at its own price", () => {
    const [, second] = rows();
    expect(second!.saving).toBe(0);
    expect(second!.breakEvenPrice).toBeCloseTo(120, 9);
  });
});

describe("offers", () => {
  it("two of the same cost share the rank, and neither is ahead: the second is level with the first", () => {
    const rows = rank([a, offered("A again", bladeA), b]);
    expect(rows.map(({ rank: own, name }) => [own, name])).toEqual([
      [1, "B"],
      [2, "A"],
      [2, "A again"],
    ]);
    expect(rows[2]!.takesTheLead).toBe("level with A");
    expect(rows[1]!.takesTheLead).not.toContain("level");
  });

  it("with a rebate from some number of blades on stand twice, from the first blade on once", () => {
    expect(rank([offered("B", bladeB, { rebate: 0.1, rebateFrom: 5 })]).map((r) => r.name)).toEqual(["B, from 5", "B"]);
    const single = rank([offered("B", bladeB, { rebate: 0.1 })]);
    expect(single.length).toBe(1);
    expect(10000 * single[0]!.costPerArea).toBeCloseTo(235.8181818 - (10000 * 26) / 50000, 6);
  });

  it("count their own change minutes", () => {
    expect(10000 * rank([offered("B", bladeB, { change: 0 })])[0]!.costPerArea).toBeCloseTo(
      10000 * (60 / 3300 + 260 / 50000),
      9,
    );
  });

  it("of equal cost share a rank; one that is beaten everywhere is never the cheapest; a lone one has none to fall behind", () => {
    expect(rank([a, { ...a, name: "A2" }, b]).map((r) => [r.name, r.rank])).toEqual([
      ["B", 1],
      ["A", 2],
      ["A2", 2],
    ]);
    const worse = rank([a, offered("worse", { price: 130, life: 30000, rate: 39 })])[1]!;
    expect([worse.bestFrom, worse.bestTo]).toEqual(["never the cheapest", "never the cheapest"]);
    expect(rank([a])[0]!.safetyMargin).toBe("");
  });

  it("have no cost per month without an area, no break-even price where they lose even as a gift, no rate to fall to with idle hours", () => {
    expect(
      refused(() => rankOffers({ offers: [a], sawHourValue: 60, areaPerMonth: undefined })[0]!.costPerMonth),
    ).toEqual({ reason: "none", parameter: "areaPerMonth", problem: "{parameter} is not given" });
    expect(refused(() => rank([a, offered("C", { ...bladeB, rate: 25 })])[1]!.breakEvenPrice).problem).toMatch(
      /even if the blade were free/,
    );
    expect(rank([a, b], 0)[0]!.safetyMargin).toMatchObject({ template: "stays first down to life {life}" });
  });

  it("rank by cost, cheapest first, in any order of the table and in any currency", () => {
    const draws = fc.record({
      list: fc.array(blades, { minLength: 1, maxLength: 6 }),
      w: spread(0.1, 500),
      k: spread(1e-3, 1e3),
    });
    const accepted = law(draws, 71, ({ list, w, k }) => {
      const offers = list.map((blade, i) => offered(String(i), blade));
      const ranked = rank(offers, w);
      const turned = rank([...offers].reverse(), w);
      const other = rank(
        offers.map((o) => ({ ...o, price: k * o.price })),
        k * w,
      );
      const costs = ranked.map((r) => r.costPerArea);
      return (
        costs.every((c, i) => i === 0 || c >= costs[i - 1]!) &&
        turned.every((r, i) => r.costPerArea === costs[i]) &&
        other.every((r, i) => relative(r.costPerArea, k * costs[i]!) < 1e-12)
      );
    });
    expect(accepted).toBe(1);
  });

  it("say at which price, life or rate they take the lead of the next one up, put back (300 tables)", () => {
    const draws = fc.record({ list: fc.array(blades, { minLength: 2, maxLength: 5 }), w: spread(1, 200) });
    law(draws, 300, ({ list, w }) => {
      const offers = list.map((blade, i) => offered(String(i), blade, { kerf: 0.001 * i }));
      const rows = rank(offers, w);
      const cost = ({ price, life, rate, kerf = 0 }: OfferedBlade): number =>
        w / (60 * rate) + (price + (w * 10) / 60) / life + kerf;
      return rows.every(({ name, takesTheLead }, i) => {
        const facts = (takesTheLead as { readonly facts?: Record<string, { readonly number: number }> }).facts ?? {};
        return Object.entries(facts).every(
          ([key, { number }]) =>
            relative(cost({ ...offers[Number(name)]!, [key]: number }), rows[i - 1]!.costPerArea) < 1e-9,
        );
      });
    });
  });

  it("a quantity rebate says how long its blades last: 5 × 50,000 of 20,000 a month are 12.5 months (by hand)", () => {
    const rows = rank([offered("B", bladeB, { rebate: 0.1, rebateFrom: 5 })]);
    expect(rows.map(({ monthsOfSupply }) => monthsOfSupply)).toEqual([12.5, undefined]);
  });

  it("one that cannot be read stands below with its reason, the others are ranked; where it is the first, no saving", () => {
    const bad = { name: "C", refusal: new InputError("invalid", "offers", "{parameter}: price in row 4 is text") };
    const rows = rankOffers({ offers: [a, bad, b], sawHourValue: 60, areaPerMonth: undefined });
    expect(rows.map(({ name, rank: place, note }) => [name, place, note])).toEqual([
      ["B", 1, ""],
      ["A", 2, ""],
      ["C", undefined, { template: "not ranked: price in row 4 is text", facts: {} }],
    ]);
    expect(rankOffers({ offers: [bad, b], sawHourValue: 60, areaPerMonth: 1 })[0]!.saving).toBeInstanceOf(InputError);
    expect(() => rankOffers({ offers: [bad], sawHourValue: 60, areaPerMonth: 1 })).toThrow(bad.refusal);
  });

  it("a thinner kerf outweighs half a blade: 0.01 in of titanium (by hand: 0.254 mm × 4.43 g/cm³ × 60 a kg = 0.675 a dm², 0.0675 per 10 cm²)", () => {
    const kerf = 0.0254 * 4.43e-3 * 60;
    expect(kerf).toBeCloseTo(0.00675, 5);
    const [first] = rank([
      offered("thick", bladeA, { kerf: 2 * kerf }),
      offered("thin", { ...bladeA, price: 180 }, { kerf }),
    ]);
    expect(first!.name).toBe("thin");
  });
});
