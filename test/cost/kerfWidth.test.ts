import { expect, it } from "vitest";
import { kerfWidth } from "../../src/cost/kerfWidth";
import { defaultShop } from "../../src/shop/defaultShop";
import { shape } from "../section/fixture";

it("the shop's kerf wins; else a 27 mm band cuts 1.4 mm in 4 in of work (usual bands: common practice)", () => {
  expect(kerfWidth({ section: shape("round 4"), shop: { ...defaultShop, kerf: 1.7 } })).toBe(1.7);
  expect(kerfWidth({ section: shape("round 4"), shop: defaultShop })).toBe(1.4);
});
