import { describe, expect, it } from "vitest";
import { jobMix, type OrderBook } from "../../src/cost/jobMix";
import { quote } from "../../src/cost/quote";
import { InputError } from "../../src/errors";
import { findMaterial } from "../../src/material/findMaterial";
import { printText } from "../../functions/kinds/sentence";
import { random } from "../plan/fixture";
import { refused, relative, shape, shopOf } from "./fixture";

const shop = shopOf({
  prices: { "bi-metal": 180, carbide: 420 },
  lives: { "bi-metal": 4e6, carbide: 9e6 },
  specialLives: { "bi-metal": [{ of: "duplex and PH stainless", value: 1.6e6 }], carbide: [] },
  stockLength: 6000,
  trim: 6,
  grip: 80,
  setupMinutes: 8,
  loadMinutes: 5,
  handlingMinutes: 1.2,
  changeMinutes: 12,
  breakInArea: 3e4,
});
const rows = [
  ["round 178 mm", "17-4PH", 60, 300],
  ["round 102 mm", "4140", 120, 55],
  ["flat 150x25 mm", "A36", 200, 1234],
  ["round 30 mm bundle 3x3", "S355J2", 400, 700],
  ["round 40 mm", "hardened steel 62 HRC", 10, 90],
] as const;
const bookOf = (own: Partial<OrderBook> = {}): OrderBook => ({
  section: rows.map(([size]) => shape(size)),
  material: rows.map(([, grade]) => findMaterial(grade, [])),
  quantities: rows.map(([, , quantity]) => quantity),
  length: rows.map(([, , , length]) => length),
  sawHourValue: 72,
  shops: rows.map(() => shop),
  ...own,
});
const nothing = new InputError("invalid", "length", "{parameter} is empty");

describe("an order book", () => {
  it("a blank row is left out; a row of which one cell is filled is a job that cannot be read", () => {
    const blank = { section: [undefined], material: [undefined], quantities: [undefined], length: [undefined] };
    const jobs = (own: Partial<OrderBook>): number => {
      const book = { ...blank, ...own };
      const also = <T>(column: readonly T[], more: readonly T[]): readonly T[] => [...column, ...more];
      const { section, material, quantities, length } = bookOf();
      return jobMix(
        bookOf({
          section: also(section, book.section),
          material: also(material, book.material),
          quantities: also(quantities, book.quantities),
          length: also(length!, book.length!),
          shops: [...rows.map(() => shop), shop],
        }),
      ).length;
    };
    const without = jobMix(bookOf()).length;
    expect(jobs({})).toBe(without);
    expect(jobs({ section: [shape("round 50 mm")] })).toBe(without + 1);
    expect(jobs({ material: [findMaterial("A36", [])] })).toBe(without + 1);
    expect(jobs({ quantities: [3] })).toBe(without + 1);
  });

  it("sums what QUOTE says job by job, at an hour's cost of the saw hour value", () => {
    const table = jobMix(bookOf());
    const lines = rows.map(([size, grade, quantity, length], i) =>
      (["bi-metal", "carbide"] as const).map((blade) => {
        try {
          const item = { shape: shape(size), grade: findMaterial(grade, []), length: nothing, notes: [] };
          const hourly = { ...shop, hourlyCost: 72 };
          return quote({ item, blade, quantity, length, material: undefined, shop: hourly });
        } catch (refusal) {
          expect([refusal, i]).toEqual([expect.any(InputError), 4]);
          return undefined;
        }
      }),
    );
    const cost = (line: (typeof lines)[number][number]): number =>
      line === undefined ? NaN : line.timeCost + line["set-up"] + line.bladeCost;
    lines.forEach(([bi, ca], i) => {
      const row = table[i]!;
      if (bi !== undefined) {
        expect(relative(row["bi-metalMinutes"]!, bi.minutes)).toBeLessThan(1e-12);
        expect(relative(row["bi-metalCost"]!, cost(bi))).toBeLessThan(1e-12);
      } else expect(row["bi-metalCost"]).toBeUndefined();
      expect(relative(row.carbideMinutes!, ca!.minutes)).toBeLessThan(1e-12);
      expect(relative(row.carbideCost!, cost(ca))).toBeLessThan(1e-12);
      expect([row.cuts, row.carbideLow! < row.carbideHigh!]).toEqual([ca!.cuts, true]);
    });
    const all = table[rows.length]!;
    const sum = (of: (pair: (typeof lines)[number]) => number): number => lines.reduce((s, pair) => s + of(pair), 0);
    expect(all.what).toBe("all jobs");
    expect(all["bi-metalCost"]).toBeCloseTo(
      sum(([bi, ca]) => cost(bi ?? ca)),
      8,
    );
    expect(all.carbideCost).toBeCloseTo(
      sum(([, ca]) => cost(ca)),
      8,
    );
    expect(all.hoursFreed).toBeCloseTo(sum(([bi, ca]) => (bi ?? ca)!.minutes - ca!.minutes) / 60, 8);
    expect(all.saving).toBeCloseTo(all["bi-metalCost"]! - all.carbideCost!, 8);
    expect(all.note).toBe("1 that one class cannot make stand with the other in both");
    expect(table[4]).toMatchObject({ cheaper: "carbide only", saving: undefined });
    expect(printText(table[4]!.note, "metric")).toMatch(/^no bi-metal: .*too hard for bi-metal/);
  });

  it("the buyer's list holds the area and the blades of every job once", () => {
    const table = jobMix(bookOf());
    const orders = table.filter(({ what }) => String(what).startsWith("to order: "));
    const best = table.find(({ what }) => what === "each job with the cheaper")!;
    const total = (of: (row: (typeof table)[number]) => number | undefined): number =>
      orders.reduce((s, row) => s + (of(row) ?? 0), 0);
    expect(total((row) => row.area)).toBeCloseTo(
      table.slice(0, rows.length).reduce((s, { area }) => s + area!, 0),
      4,
    );
    expect(total((row) => row["bi-metalBlades"])).toBeCloseTo(best["bi-metalBlades"]!, 9);
    expect(total((row) => row.carbideBlades)).toBeCloseTo(best.carbideBlades!, 9);
    expect(best.saving).toBeCloseTo(
      table.slice(0, rows.length).reduce((s, { saving }) => s + Math.max(0, saving ?? 0), 0),
      8,
    );
  });

  it("put back into the shop block, the highest price makes both classes cost the same (to 1e-9)", () => {
    const next = random(5);
    for (let run = 0; run < 40; run += 1) {
      const book = bookOf({
        quantities: rows.map(() => 1 + Math.floor(500 * next())),
        sawHourValue: 1 + 150 * next(),
      });
      const highest = jobMix(book).find(({ what }) => what === "highest carbide price")!.carbideCost;
      if (highest === undefined) continue;
      const paid = book.shops.map((s) => ({ ...(s as typeof shop), prices: { ...shop.prices, carbide: highest } }));
      const all = jobMix({ ...book, shops: paid }).find(({ what }) => what === "all jobs")!;
      expect(Math.abs(all.saving!)).toBeLessThan(1e-9 * all["bi-metalCost"]!);
    }
  });

  it("leaves out and names what it cannot read or make, and counts it", () => {
    const bad = new InputError("invalid", "section", "{parameter} is text");
    const book = bookOf({
      section: [bad, ...rows.slice(1).map(([size]) => shape(size))],
      quantities: [1, undefined, 2, 3, 4],
      shops: rows.map((_, i) => (i === 2 ? { ...shop, maximumWidth: 100 } : shop)),
    });
    const table = jobMix(book);
    expect(table.slice(0, 3).map(({ note }) => printText(note, "metric"))).toEqual([
      "left out: section is text",
      "left out: no quantities",
      "left out: the work is 150 mm wide; this saw takes 100 mm",
    ]);
    expect(table[0]!.what).toBe("row 1");
    expect(printText(table.at(-1)!.note, "metric")).toMatch(/ 3 rows are left out\.$/);
  });

  it("passes over blank rows, and says when nothing is there to compare", () => {
    const empty = bookOf({ section: [undefined], material: [undefined], quantities: [undefined] });
    expect(jobMix(empty).map(({ note }) => printText(note, "metric"))).toEqual(["There is nothing to compare."]);
    const hard = bookOf();
    const table = jobMix({
      ...hard,
      section: [hard.section[4]],
      material: [hard.material[4]],
      quantities: [10],
      length: undefined,
    });
    expect(printText(table.at(-1)!.note, "metric")).toBe(
      "No job can be cut with both classes, so there is nothing to choose.",
    );
  });

  it("is refused whole by what the shop block lacks", () => {
    const none = rows.map(() => ({ ...shop, prices: { "bi-metal": 180, carbide: undefined } }));
    expect(refused(() => jobMix(bookOf({ shops: none })))).toMatchObject({ reason: "invalid", parameter: "settings" });
  });
});
