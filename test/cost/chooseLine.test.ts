import { describe, expect, it } from "vitest";
import { chooseLine } from "../../src/cost/chooseLine";
import { InputError } from "../../src/errors";
import { refused, shape, shopOf, steel } from "./fixture";

const shop = shopOf({
  hourlyCost: 60,
  prices: { "bi-metal": 180, carbide: 420 },
  lives: { "bi-metal": 4e6, carbide: 9e6 },
  stockLength: 6000,
});
const missing = (what: string) => new InputError("invalid", what, "{parameter} is empty or 0");
const item = { shape: shape("round 178 mm"), grade: missing("material"), length: missing("length"), notes: [] };
const ask = (blade: "bi-metal" | "carbide" | "cheapest", length: number | undefined = 300) =>
  chooseLine({ item, blade, quantity: 10, material: steel, length, shop });

describe("the order line of a quote", () => {
  it("cheapest is the class of lower cost (definition)", () => {
    const [biMetal, carbide] = [ask("bi-metal"), ask("carbide")];
    const best = biMetal.parts.cost <= carbide.parts.cost ? "bi-metal" : "carbide";
    expect(ask("cheapest").blade).toBe(best);
    expect(ask("cheapest").parts.cost).toBe(Math.min(biMetal.parts.cost, carbide.parts.cost));
  });

  it("refuses a line that neither says nor is given its length, by name", () => {
    const call = () => chooseLine({ item, blade: "carbide", quantity: 10, material: steel, length: undefined, shop });
    expect(refused(call)).toMatchObject({ reason: "invalid", parameter: "length" });
  });
});
