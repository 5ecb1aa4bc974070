import { describe, expect, it } from "vitest";
import { quote } from "../../src/cost/quote";
import { quoteLine } from "../../src/cost/quoteLine";
import { InputError } from "../../src/errors";
import { findMaterial } from "../../src/material/findMaterial";
import type { Shop } from "../../src/shop/shop";
import { refused, shape, shopOf, steel } from "./fixture";

const shop = shopOf({
  hourlyCost: 60,
  prices: { "bi-metal": 180, carbide: 420 },
  lives: { "bi-metal": 4e6, carbide: 9e6 },
  materialPrice: 1.2,
  stockLength: 6000,
  kerf: 1.6,
  setupMinutes: 10,
});
const big = shape("round 178 mm");
const nothing = (what: string) => new InputError("invalid", what, "{parameter} is empty or 0");
const sizeOnly = (size: string) => ({
  shape: shape(size),
  grade: nothing("material"),
  length: nothing("length"),
  notes: [],
});
const ask = (own: Partial<Parameters<typeof quote>[0]> = {}, block: Partial<Shop> = {}) =>
  quote({
    item: sizeOnly("round 178 mm"),
    blade: "bi-metal",
    quantity: 10,
    material: steel,
    length: 300,
    ...own,
    shop: { ...shop, ...block },
  });

describe("a quote", () => {
  it("says how the line was read, with its notes and the tuning where there is one", () => {
    const template = (own: Parameters<typeof ask>[0], block: Partial<Shop> = {}): string => {
      const read = ask(own, block).readAs;
      return typeof read === "object" && "template" in read ? read.template : String(read);
    };
    const plain = `${big.text} · ${steel.name} · {length} · 10 pieces`;
    expect(template({})).toBe(plain);
    const noted = { item: { ...sizeOnly("round 178 mm"), notes: ["a note of the line"] } };
    expect(template(noted)).toBe(`${plain} · a note of the line`);
  });

  it("gives the line's values by their names, each costs a tenth of ten", () => {
    const line = quoteLine({ section: big, material: steel, length: 300, quantity: 10, blade: "bi-metal", shop });
    const got = ask();
    expect(got).toMatchObject({
      priceLine: line.price,
      minutes: line.parts.minutes,
      rate: line.prediction.rate,
      cuts: 10,
      bars: 1,
      timeCost: line.parts.time,
      "set-up": 10,
      minimumApplied: "no",
      blade: "bi-metal",
      material: steel.name,
      size: big.text,
    });
    expect(got.priceEach).toBeCloseTo(got.priceLine / 10, 12);
    expect(got.costEach * 10).toBeCloseTo(
      got.timeCost + got.bladeCost + got.kerfCost + got.endsCost + got["set-up"],
      9,
    );
    expect(ask({}, { minimumCharge: 1e6 }).minimumApplied).toBe("yes");
  });

  it('"cheapest" is the class of lower cost', () => {
    expect(ask({ blade: "cheapest" })).toEqual(
      [ask(), ask({ blade: "carbide" })].sort((a, b) => a.costEach - b.costEach)[0],
    );
    expect(ask({ blade: "cheapest" }, { prices: { "bi-metal": 180, carbide: 1e6 } }).blade).toBe("bi-metal");
    expect(ask({ blade: "cheapest" }, { prices: { "bi-metal": 1e6, carbide: 420 } }).blade).toBe("carbide");
  });

  it('"cheapest" leaves out a class that cannot make the cut: carbide in a thin wall, bi-metal in hard steel', () => {
    expect(ask({ blade: "cheapest", item: sizeOnly("tube 50x2 mm") }).blade).toBe("bi-metal");
    const hard = { ...steel, group: findMaterial("17-4PH", []).group! };
    const carbideOnly = { ...hard, group: { ...hard.group, blades: { ...hard.group.blades, "bi-metal": undefined } } };
    expect(ask({ blade: "cheapest", material: carbideOnly }).blade).toBe("carbide");
    expect(
      refused(() => ask({ blade: "cheapest", material: carbideOnly, item: sizeOnly("tube 50x2 mm") })).reason,
    ).toBe("none");
  });

  it('"cheapest" is refused where the shop block does not price a class that could cut: a forgotten price must not win', () => {
    expect(
      refused(() => ask({ blade: "cheapest" }, { prices: { "bi-metal": 180, carbide: undefined } })),
    ).toMatchObject({ reason: "invalid", parameter: "settings" });
  });

  it("takes material and length from the description where none is given beside it; given ones win", () => {
    const described = { shape: shape("round 178 mm"), grade: findMaterial("304", []), length: 300, notes: [] };
    expect(ask({ item: described, material: undefined, length: undefined })).toEqual(
      ask({ material: findMaterial("304", []) }),
    );
    expect(ask({ item: described })).toEqual(ask());
    expect(
      refused(() => ask({ item: { ...described, shape: new InputError("none", "item", "which size?") } })).problem,
    ).toBe("which size?");
  });

  it("needs a material and a length", () => {
    expect(refused(() => ask({ material: undefined }))).toEqual({
      reason: "invalid",
      parameter: "material",
      problem: "{parameter} is empty or 0",
    });
    expect(refused(() => ask({ length: undefined })).parameter).toBe("length");
  });
});
