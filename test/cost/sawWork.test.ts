import { expect, it } from "vitest";
import { sawWork } from "../../src/cost/sawWork";
import { refused, shape, shopOf, steel } from "./fixture";

const shop = shopOf({
  handlingMinutes: 1,
  loadMinutes: 6,
  setupMinutes: 15,
  changeMinutes: 12,
  prices: { "bi-metal": 180, carbide: undefined },
  lives: { "bi-metal": 4e6, carbide: undefined },
  breakInArea: 3e5,
  breakInFeedShare: 0.5,
  trim: 10,
});
const input = { section: shape("square 100 mm"), material: steel, blade: "bi-metal" as const, shop };

it("ten cuts of 100 cm² from two loads at 50 cm²/min: two trim cuts, 2 minutes a cut, 60 more for a new blade (by hand)", () => {
  expect(sawWork(input, { cuts: 10, barCuts: 12, loads: 2 })(5000)).toMatchObject({
    cycles: 12,
    cutMinutes: 2,
    area: 12 * 10_000,
    breakInMinutes: 60,
    price: 180,
    life: 4e6,
  });
});
it("break-in at 0.4 of the feed takes 1.5 times its minutes more: 90 (by hand)", () => {
  const slow = { ...input, shop: { ...shop, breakInFeedShare: 0.4 } };
  expect(sawWork(slow, { cuts: 1, barCuts: 1, loads: 1 })(5000).breakInMinutes).toBeCloseTo(90, 12);
});
it("a bundle of twelve: the area is that of the bars that are cut, not of whole stacks", () => {
  const bundle = { ...input, section: shape("square 10 mm bundle 3x4") };
  expect(sawWork(bundle, { cuts: 9, barCuts: 100, loads: 1 })(5000).area).toBeCloseTo(100 * 100, 9);
});
it("a break-in area above the life is refused", () => {
  const long = { ...input, shop: { ...shop, breakInArea: 5e6 } };
  expect(refused(() => sawWork(long, { cuts: 1, barCuts: 1, loads: 1 }))).toMatchObject({ parameter: "settings" });
});
