import { describe, expect, it } from "vitest";
import { shopBlade } from "../../src/cost/shopBlade";
import { findMaterial } from "../../src/material/findMaterial";
import { refused, shopOf, steel } from "./fixture";

const titanium = findMaterial("Ti-6Al-4V", []);
const shop = shopOf({
  prices: { "bi-metal": 180, carbide: 420 },
  lives: { "bi-metal": 6e6, carbide: undefined },
  specialLives: {
    "bi-metal": [{ of: "titanium alloys", value: 1e6 }],
    carbide: [
      { of: "titanium alloys", value: 2e6 },
      { of: titanium.key, value: 3e6 },
    ],
  },
});

describe("price and life of a class of blade, from the shop block (the shop's own data)", () => {
  it("a life for the grade wins over one for its group, and both over the general one", () => {
    expect(shopBlade({ blade: "bi-metal", material: steel, shop })).toEqual({ price: 180, life: 6e6 });
    expect(shopBlade({ blade: "bi-metal", material: titanium, shop })).toEqual({ price: 180, life: 1e6 });
    expect(shopBlade({ blade: "carbide", material: titanium, shop })).toEqual({ price: 420, life: 3e6 });
  });

  it("a missing price or life is refused by its label, never 0", () => {
    expect(refused(() => shopBlade({ blade: "carbide", material: steel, shop }))).toEqual({
      reason: "invalid",
      parameter: "settings",
      problem: '{parameter} give no "{label}"',
    });
    const facts = (run: () => unknown) => {
      try {
        run();
      } catch (error) {
        return (error as { readonly facts: unknown }).facts;
      }
      return undefined;
    };
    expect(facts(() => shopBlade({ blade: "carbide", material: steel, shop }))).toEqual({ label: "Carbide life" });
    expect(facts(() => shopBlade({ blade: "bi-metal", material: steel, shop: shopOf({}) }))).toEqual({
      label: "Bi-metal price",
    });
  });
});
