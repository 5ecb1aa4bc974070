import { describe, expect, it } from "vitest";
import { jobWay } from "../../src/cost/jobWay";
import { quote } from "../../src/cost/quote";
import { InputError } from "../../src/errors";
import { refused, relative, shape, shopOf, steel } from "./fixture";

const shop = shopOf({
  hourlyCost: 66,
  prices: { "bi-metal": 180, carbide: 420 },
  lives: { "bi-metal": 4e6, carbide: 9e6 },
  stockLength: 6000,
  kerf: 1.6,
  trim: 8,
  grip: 70,
  setupMinutes: 10,
  loadMinutes: 5,
  handlingMinutes: 1.2,
  changeMinutes: 12,
  breakInArea: 5e4,
});
const nothing = new InputError("invalid", "length", "{parameter} is empty");

describe("a job of an order book", () => {
  it.each([
    ["round 178 mm", 10, 300, "bi-metal", {}],
    ["round 178 mm", 137, 300, "carbide", {}],
    ["round 50 mm bundle 3x4", 100, 216, "bi-metal", {}],
    ["flat 150x25 mm", 41, 1234, "carbide", {}],
    ["round 178 mm", 97, 300, "carbide", { testPieces: 2, rejectShare: 0.04 }],
    ["round 50 mm bundle 3x4", 100, 216, "bi-metal", { testPieces: 1, rejectShare: 0.15 }],
  ] as const)(
    "%s, %s pieces: the minutes and the cost of QUOTE, another way round",
    (size, quantity, length, blade, own) => {
      const section = shape(size);
      const terms = { ...shop, ...own };
      const line = quote({
        item: { shape: section, grade: steel, length: nothing, notes: [] },
        blade,
        quantity,
        length,
        material: steel,
        shop: terms,
      });
      const way = jobWay({ section, material: steel, quantity, length, shop: terms }, blade);
      const blades = way.area / way.life;
      const minutes = way.run + way.bladeMinutes * blades;
      expect(relative(minutes, line.minutes)).toBeLessThan(1e-12);
      expect(relative(way.minutesLow, line.minutesLow)).toBeLessThan(1e-12);
      expect(relative(way.minutesHigh, line.minutesHigh)).toBeLessThan(1e-12);
      expect([way.cuts, way.pitch]).toEqual([line.cuts, line.pitch]);
      const cost = (66 * minutes) / 60 + way.price * blades;
      expect(relative(cost, line.timeCost + line["set-up"] + line.bladeCost)).toBeLessThan(1e-12);
    },
  );

  it("without a length neither bars nor trim cuts are counted; a stack gives its pieces each cut", () => {
    const section = shape("round 50 mm bundle 3x4");
    const way = jobWay({ section, material: steel, quantity: 100, length: undefined, shop }, "bi-metal");
    expect(way.cuts).toBe(9);
    expect(way.area).toBeCloseTo((100 * Math.PI * 50 ** 2) / 4, 4);
  });

  it("refuses what the shop block lacks", () => {
    const work = { section: shape("round 178 mm"), material: steel, quantity: 10, length: 300 };
    const of = (own: Partial<typeof shop>) => refused(() => jobWay({ ...work, shop: { ...shop, ...own } }, "carbide"));
    expect(of({ stockLength: undefined }).problem).toBe('{parameter} give no "{label}"');
    expect(of({ prices: { "bi-metal": 180, carbide: undefined } }).problem).toBe('{parameter} give no "{label}"');
    expect(of({ breakInArea: 1e8 }).problem).toMatch(/Break-in area above the life/);
  });
});
