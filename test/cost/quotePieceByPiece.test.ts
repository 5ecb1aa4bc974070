import { describe, expect, it } from "vitest";
import { quoteLine, type QuotedLine, type QuoteWork } from "../../src/cost/quoteLine";
import { InputError } from "../../src/errors";
import type { Shop } from "../../src/shop/shop";
import { relative, shape, shopOf, steel } from "./fixture";

/** A generator of the test's own. */
const random = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
};

interface Day {
  minutes: number;
  money: number;
  area: number;
}

/**
 * The saw's day, piece by piece, another way of counting: bars are laid into the stack, the clock runs with every cut,
 * money is paid as it falls due. Single bars only, so that every number can be followed.
 */
function saw({ shop, length, section, quantity }: QuoteWork, rate: number, kerf: number): Day {
  const wage = shop.hourlyCost! + (shop.operatorCost ?? 0) * shop.operatorShare;
  const day: Day = { minutes: 0, money: 0, area: 0 };
  const pass = (minutes: number): void => {
    day.minutes += minutes;
    day.money += (minutes / 60) * (wage / shop.availability);
  };
  const worth = (steelLength: number): number =>
    steelLength * section.pieceArea * steel.density * (shop.materialPrice! - shop.scrapPrice);
  // Sawn until enough are good: of n pieces the share that is rejected is lost, and the test pieces come on top.
  let sawn = 0;
  while (sawn * (1 - shop.rejectShare) < quantity - 1e-9) sawn += 1;
  sawn += shop.testPieces;
  pass(shop.setupMinutes);
  let left = 0;
  const cut = (): void => {
    pass(section.area / rate + shop.handlingMinutes);
    day.area += section.area;
  };
  const lay = (): void => {
    if (left > 0) putAway();
    pass(shop.loadMinutes);
    left = shop.stockLength!;
    if (shop.trim > 0) {
      cut();
      day.money += worth(shop.trim);
      left -= shop.trim;
    }
  };
  const putAway = (): void => {
    const isUseful = shop.usefulRemnant !== undefined && left >= shop.usefulRemnant - 5e-7;
    if (left > 5e-7) day.money += worth(left) * (isUseful ? shop.remnantDiscount : 1);
    left = 0;
  };
  for (let piece = 0; piece < sawn; piece += 1) {
    // With a grip every piece is sawn off in front of it; without one the last may be the bar's own end.
    const needs = shop.grip > 0 ? length + kerf + shop.grip : length;
    if (left < needs - 5e-7) lay();
    if (left - length > 5e-7) {
      cut();
      day.money += worth(Math.min(kerf, left - length));
      left = Math.max(0, left - length - kerf);
    } else left = 0;
    if (piece >= quantity) day.money += worth(length);
  }
  putAway();
  const blades = day.area / shop.lives["bi-metal"]!;
  day.money += blades * shop.prices["bi-metal"]!;
  pass(blades * (shop.changeMinutes + (shop.breakInArea / rate) * (1 / shop.breakInFeedShare - 1)));
  if (shop.chargeMaterial === "yes")
    day.money += quantity * length * section.pieceArea * steel.density * shop.materialPrice!;
  return day;
}

const lines = Number(process.env["QUOTES"] ?? 400);

it(`${String(lines)} lines with every term, sawn piece by piece: cost, minutes, price low and high`, () => {
  const next = random(11);
  const pick = <T>(...list: readonly T[]): T => list[Math.floor(next() * list.length)]!;
  let worst = 0;
  for (let i = 0; i < lines; i += 1) {
    const block: Partial<Shop> = {
      hourlyCost: 20 + 80 * next(),
      operatorCost: pick(undefined, 40 * next() + 1),
      operatorShare: 0.1 + 0.9 * next(),
      setupMinutes: 30 * next(),
      loadMinutes: 10 * next(),
      handlingMinutes: 2 * next(),
      changeMinutes: 15 * next(),
      availability: 0.5 + 0.5 * next(),
      prices: { "bi-metal": 50 + 200 * next(), carbide: undefined },
      lives: { "bi-metal": 2e6 + 5e6 * next(), carbide: undefined },
      materialPrice: 1 + next(),
      scrapPrice: next(),
      trim: pick(0, 12),
      grip: pick(0, 70),
      stockLength: 3000 + 3000 * next(),
      usefulRemnant: pick(undefined, 300, 800),
      remnantDiscount: pick(0, next()),
      testPieces: pick(0, 1, 3),
      rejectShare: pick(0, 0.5 * next()),
      chargeMaterial: pick("yes", "no"),
      kerf: 1.6,
      breakInArea: pick(0, 1e5),
      breakInFeedShare: 0.3 + 0.6 * next(),
      margin: 0.6 * next(),
      minimumCharge: pick(0, 500 * next()),
    };
    const work: QuoteWork = {
      section: shape(`round ${String(20 + Math.floor(180 * next()))} mm`),
      material: steel,
      length: 20 + 900 * next(),
      quantity: 1 + Math.floor(150 * next()),
      blade: "bi-metal",
      shop: shopOf(block),
    };
    const quoted: QuotedLine = quoteLine(work);
    const { prediction, parts, priceLow, priceHigh, minutesLow, minutesHigh, price } = quoted;
    const priceOf = ({ money }: Day): number => Math.max(money / (1 - work.shop.margin), work.shop.minimumCharge);
    const [own, quick, slow] = [prediction.rate, prediction.rateHigh, prediction.rateLow].map((rate) =>
      saw(work, rate, 1.6),
    ) as [Day, Day, Day];
    const pairs = [
      [parts.cost, own.money],
      [parts.minutes, own.minutes],
      [minutesLow, quick.minutes],
      [minutesHigh, slow.minutes],
      [price, priceOf(own)],
      [priceLow, priceOf(quick)],
      [priceHigh, priceOf(slow)],
    ] as const;
    for (const [is, wanted] of pairs) worst = Math.max(worst, relative(is, wanted));
    expect(priceLow).toBeLessThanOrEqual(price);
    expect(price).toBeLessThanOrEqual(priceHigh);
  }
  expect(worst).toBeLessThan(1e-9);
});

describe("what is wrong in the block is refused by its label", () => {
  const shop = shopOf({
    hourlyCost: 60,
    prices: { "bi-metal": 180, carbide: 1 },
    lives: { "bi-metal": 4e6, carbide: 1 },
    stockLength: 6000,
    materialPrice: 1,
  });
  const work = { section: shape("round 50 mm"), material: steel, length: 100, quantity: 5, blade: "bi-metal" as const };
  it.each([
    ["Scrap price", { scrapPrice: 1.1 }],
    ["Material price", { chargeMaterial: "yes", materialPrice: undefined }],
  ] as const)("%s", (label, block) => {
    const quoted = (): QuotedLine => quoteLine({ ...work, shop: { ...shop, ...block } });
    const said = (error: unknown): string =>
      error instanceof InputError ? JSON.stringify([error.problem, error.facts]) : "";
    let refusal = "";
    try {
      quoted();
    } catch (error) {
      refusal = said(error);
    }
    expect(refusal).toContain(label);
  });
});
