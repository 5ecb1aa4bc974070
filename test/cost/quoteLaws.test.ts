import { expect, it } from "vitest";
import { priceBreaks } from "../../src/cost/priceBreaks";
import { quoteLine, type QuoteWork } from "../../src/cost/quoteLine";
import type { Shop } from "../../src/shop/shop";
import { random } from "../plan/fixture";
import { relative, shape, shopOf, steel } from "./fixture";

/** Costs and times of the shop block: more of one never makes a line cheaper. */
const dearer: readonly ((shop: Shop, by: number) => Partial<Shop>)[] = [
  (s, by) => ({ hourlyCost: s.hourlyCost! * by }),
  (s, by) => ({ operatorCost: (s.operatorCost ?? 1) * by }),
  (s, by) => ({ setupMinutes: s.setupMinutes * by }),
  (s, by) => ({ loadMinutes: s.loadMinutes * by }),
  (s, by) => ({ handlingMinutes: s.handlingMinutes * by }),
  (s, by) => ({ changeMinutes: s.changeMinutes * by }),
  (s, by) => ({ prices: { ...s.prices, "bi-metal": s.prices["bi-metal"]! * by } }),
  (s, by) => ({ lives: { ...s.lives, "bi-metal": s.lives["bi-metal"]! / by } }),
  (s, by) => ({ materialPrice: s.materialPrice! * by }),
  (s, by) => ({ scrapPrice: s.scrapPrice / by }),
  (s, by) => ({ minimumCharge: s.minimumCharge * by }),
  (s, by) => ({ margin: 1 - (1 - s.margin) / by }),
];

const runs = Number(process.env["QUOTES"] ?? 1000);

it(`${String(runs)} lines: the parts are the whole, a price rises with each cost, and where more pieces cost less the note says so`, () => {
  const next = random(18);
  for (let i = 0; i < runs; i += 1) {
    const shop = shopOf({
      hourlyCost: 20 + 80 * next(),
      operatorCost: 1 + 40 * next(),
      operatorShare: 0.1 + 0.9 * next(),
      setupMinutes: 1 + 30 * next(),
      loadMinutes: 1 + 10 * next(),
      handlingMinutes: 0.1 + 2 * next(),
      changeMinutes: 1 + 15 * next(),
      availability: 0.5 + 0.5 * next(),
      prices: { "bi-metal": 50 + 200 * next(), carbide: undefined },
      lives: { "bi-metal": 2e6 + 5e6 * next(), carbide: undefined },
      materialPrice: 1 + next(),
      scrapPrice: 0.1 + 0.9 * next(),
      trim: next() < 0.5 ? 0 : 12,
      grip: next() < 0.5 ? 0 : 70,
      stockLength: 3000 + 3000 * next(),
      usefulRemnant: next() < 0.5 ? undefined : 200 + 1500 * next(),
      remnantDiscount: next(),
      testPieces: Math.floor(3 * next()),
      rejectShare: 0.4 * next(),
      chargeMaterial: next() < 0.5 ? "yes" : "no",
      kerf: 1.6,
      margin: 0.5 * next(),
      minimumCharge: 1 + 100 * next(),
    });
    const work: QuoteWork = {
      section: shape(`round ${String(20 + Math.floor(180 * next()))} mm`),
      material: steel,
      length: 20 + 900 * next(),
      quantity: 1 + Math.floor(60 * next()),
      blade: "bi-metal",
      shop,
    };
    const { parts, price } = quoteLine(work);
    const sum = parts.time + parts.blade + parts.kerf + parts.ends + parts.setUp + parts.material;
    expect(relative(parts.cost, sum)).toBeLessThan(1e-12);
    const raise = dearer[i % dearer.length]!;
    const raised = quoteLine({ ...work, shop: { ...shop, ...raise(shop, 1 + next()) } });
    expect(raised.price).toBeGreaterThanOrEqual(price * (1 - 1e-12));
    const item = { shape: work.section, grade: steel, length: work.length, notes: [] };
    const quantities = [work.quantity, work.quantity + 1 + Math.floor(5 * next())];
    const [small, large] = priceBreaks({
      item,
      blade: "bi-metal",
      quantities,
      material: undefined,
      length: undefined,
      shop,
    });
    expect(small!.note !== "").toBe(large!.priceLine < small!.priceLine);
  }
});
