import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutCost } from "../../src/cost/cutCost";
import { quoteLine, type QuoteWork } from "../../src/cost/quoteLine";
import { predictCut } from "../../src/cutting/predictCut";
import type { Shop } from "../../src/shop/shop";
import { bars } from "../../src/yield/bars";
import { law, refused, relative, shape, shopOf, spread, steel } from "./fixture";

const shop = shopOf({
  hourlyCost: 63,
  setupMinutes: 15,
  loadMinutes: 6,
  handlingMinutes: 0.7,
  changeMinutes: 12,
  prices: { "bi-metal": 180, carbide: 420 },
  lives: { "bi-metal": 4e6, carbide: 9e6 },
  materialPrice: 1.2,
  scrapPrice: 0.25,
  trim: 10,
  grip: 60,
  stockLength: 6000,
  kerf: 1.6,
  breakInArea: 3e5,
});
const line = (own: Partial<QuoteWork> = {}, block: Partial<Shop> = {}) =>
  quoteLine({
    section: shape("round 100 mm"),
    material: steel,
    length: 100,
    quantity: 120,
    blade: "bi-metal",
    ...own,
    shop: { ...shop, ...block },
  });

describe("a quoted line", () => {
  it("120 pieces of 100 mm from 6 m bars: 3 bars of 58, own check values", () => {
    expect(line().loads).toMatchObject({ loads: 3, bars: 3, cuts: 120, barCuts: 123 });
  });

  it("a bundle of 3 × 4 and 100 pieces is 9 cuts; the mass is that of 100 pieces", () => {
    const bundle = line({ section: shape("round 50 mm bundle 3x4"), quantity: 100, length: 216 });
    expect(bundle.loads).toMatchObject({ cuts: 9, bars: 12, loads: 1 });
    expect(bundle.mass).toBeCloseTo(100 * (Math.PI / 4) * 50 ** 2 * 216 * steel.density, 9);
  });

  it("margin is a share of the price, not a mark-up: cost 52 at 20 % is 65 (P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.4 turned round, companion read), not 62.40", () => {
    const plain = line();
    expect(line({}, { margin: 0.2 }).price).toBeCloseTo((plain.parts.cost * 65) / 52, 9);
  });

  it("the minimum charge holds the price up, and says so", () => {
    expect(line({}, { minimumCharge: 1e4 })).toMatchObject({ price: 1e4, minimumApplied: true });
    // With a margin of 0.2 the least charge that holds the price up is cost / 0.8; at exactly that it does not.
    const asked = line({}, { margin: 0.2 }).price;
    const applied = (by: number) => line({}, { margin: 0.2, minimumCharge: asked * by }).minimumApplied;
    expect([applied(0.99), applied(1), applied(1.01)]).toEqual([false, false, true]);
    const free = line();
    expect(free.minimumApplied).toBe(false);
    expect(free.price).toBe(free.parts.cost);
  });

  it("quantity comes in steps: the piece is dearer again where a new bar begins", () => {
    const each = (quantity: number) => line({ quantity }, { usefulRemnant: 300 }).price / quantity;
    expect(each(58)).toBeLessThan(each(57));
    expect(each(59)).toBeGreaterThan(each(58));
    expect(each(116)).toBeLessThan(each(58));
  });

  it("minutes low and high come from the rate's band, and set-up and loading are in them", () => {
    const { parts, minutesLow, minutesHigh, prediction } = line();
    const area = (Math.PI / 4) * 100 ** 2;
    const fixed = 15 + 3 * 6 + 123 * 0.7 + (123 * area * 12) / 4e6;
    const at = (rate: number) => fixed + (123 * area) / rate + ((123 * area) / 4e6) * (3e5 / rate);
    expect(relative(parts.minutes, at(prediction.rate))).toBeLessThan(1e-9);
    expect(relative(minutesLow, at(prediction.rateHigh))).toBeLessThan(1e-9);
    expect(relative(minutesHigh, at(prediction.rateLow))).toBeLessThan(1e-9);
    expect(minutesLow).toBeLessThan(minutesHigh);
  });

  it("under a mitre the kerf is longer along the bar: 1.6 / cos 30°", () => {
    const { loads } = line({ section: shape("round 100 mm mitre 30") });
    expect(loads.kerf).toBeCloseTo((120 * 1.6) / Math.cos(Math.PI / 6), 6);
  });

  it("an own material's price wins over the shop's; without any the bar is not charged", () => {
    const dear = line({ material: { ...steel, price: 2.15 } });
    expect(relative(dear.parts.kerf, 2 * line().parts.kerf)).toBeLessThan(1e-9);
    expect(line({}, { materialPrice: undefined }).parts).toMatchObject({ kerf: 0, ends: 0 });
  });

  it("what the shop block does not give is refused by name, never 0", () => {
    expect(refused(() => line({}, { hourlyCost: undefined }))).toMatchObject({
      reason: "invalid",
      parameter: "settings",
    });
    expect(refused(() => line({}, { scrapPrice: 1.3 }))).toMatchObject({ reason: "invalid", parameter: "settings" });
    expect(line({}, { scrapPrice: 1.2 }).parts.kerf).toBe(0);
    expect(refused(() => line({}, { stockLength: undefined }))).toMatchObject({
      reason: "invalid",
      parameter: "settings",
    });
    expect(refused(() => line({}, { prices: { "bi-metal": undefined, carbide: 1 } }))).toMatchObject({
      reason: "invalid",
      parameter: "settings",
    });
    expect(refused(() => line({}, { breakInArea: 5e6 }))).toMatchObject({ reason: "invalid", parameter: "settings" });
    expect(refused(() => line({ length: 7000 }))).toMatchObject({ reason: "invalid", parameter: "piece" });
  });
});

describe("a quoted line equals its parts computed singly", () => {
  it("cutCost of a cut at predictCut's rate, times the cuts, with bars, set-up and ends by hand", () => {
    const draws = fc.record({
      size: spread(20, 300),
      length: spread(30, 2500),
      quantity: fc.integer({ min: 1, max: 800 }),
      carbide: fc.boolean(),
      hourlyCost: spread(10, 300),
      k: spread(1e-2, 1e2),
    });
    const accepted = law(
      draws,
      131,
      ({ size, length, quantity, carbide, hourlyCost, k }) => {
        const section = shape(`square ${Math.round(size)} mm`);
        const blade = carbide && size > 60 ? "carbide" : "bi-metal";
        const own = { ...shop, hourlyCost };
        const quoted = quoteLine({ section, material: steel, length, quantity, blade, shop: own });
        const { rate } = predictCut({ section, material: steel, blade, shop: own, pitch: undefined });
        const one = cutCost({
          section,
          rate,
          hourlyCost,
          price: own.prices[blade]!,
          life: own.lives[blade]!,
          shop: { ...own, density: steel.density },
        });
        const pulled = bars({ stock: 6000, piece: length, kerf: 1.6, trim: 10, grip: 60, quantity });
        const cycles = quantity + pulled.bars;
        const timeOfCut = one.cutting + one.handling + one.bladeChange + one["break-in"];
        const time = cycles * timeOfCut + (hourlyCost / 60) * 6 * pulled.bars;
        const ends = (pulled.bars * 6000 - quantity * (length + 1.6)) * section.area * steel.density * (1.2 - 0.25);
        const { parts } = quoted;
        const same = [
          [parts.time, time],
          [parts.blade, cycles * one.bladeWear],
          [parts.kerf, quantity * one.kerf],
          [parts.setUp, (hourlyCost / 60) * 15],
        ].every(([a, b]) => relative(a!, b!) < 1e-12);
        const other = quoteLine({
          section,
          material: steel,
          length,
          quantity,
          blade,
          shop: {
            ...own,
            hourlyCost: k * hourlyCost,
            prices: { "bi-metal": k * 180, carbide: k * 420 },
            materialPrice: k * 1.2,
            scrapPrice: k * 0.25,
          },
        });
        return (
          same &&
          relative(parts.ends, ends) < 1e-9 &&
          relative(other.price, k * quoted.price) < 1e-12 &&
          other.parts.minutes === parts.minutes
        );
      },
      120,
    );
    expect(accepted).toBe(1);
  });
});
