import { expect, it } from "vitest";
import { priceBreaks } from "../../src/cost/priceBreaks";
import { quote } from "../../src/cost/quote";
import { shape, shopOf, steel } from "./fixture";

const shop = shopOf({
  hourlyCost: 60,
  prices: { "bi-metal": 180, carbide: undefined },
  lives: { "bi-metal": 4e6, carbide: undefined },
  stockLength: 3000,
  materialPrice: 2,
  grip: 60,
  usefulRemnant: 1000,
  kerf: 1.6,
});
const item = {
  item: { shape: shape("round 100 mm"), grade: steel, length: 900, notes: [] },
  blade: "bi-metal" as const,
  material: undefined,
  length: undefined,
  shop,
};

it("every row is the quote of its quantity", () => {
  for (const { quantity, priceEach, priceLine, minutes, bars } of priceBreaks({ ...item, quantities: [1, 7, 40] }))
    expect(quote({ ...item, quantity })).toMatchObject({ priceEach, priceLine, minutes, bars });
});

it("where a larger order costs less, the row says so (by hand: two pieces of 900 leave 1,197 of 3 m, lost below 2,000; three leave 295)", () => {
  const rows = priceBreaks({ ...item, shop: { ...shop, usefulRemnant: 2000 }, quantities: [2, 3, 1] });
  expect(rows.map(({ note }) => note)).toEqual(["3 pieces cost less in all: less of the bar is lost", "", ""]);
});
