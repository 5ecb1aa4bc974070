import { describe, expect, it } from "vitest";
import { CellError, type Cell } from "../../../functions/kinds/cell";
import { estimate } from "../../../functions/workbook/samples/estimate";
import { curves } from "../../../functions/workbook/samples/curves";
import { purchase } from "../../../functions/workbook/samples/purchase";
import { shop } from "../../../functions/workbook/samples/shop";
import type { SampleCell, SampleSheet } from "../../../functions/workbook/samples/sheet";
import { evaluate } from "../../browser/evaluate";

/** The sheets of buyer and estimator with other cells typed in: what they say then, and what stays as it was. Invented data. */

/** Rows and columns from 0. */
type Typed = readonly (readonly [row: number, column: number, value: SampleCell])[];

const typedInto = (sheets: readonly SampleSheet[], typed: Typed) =>
  evaluate(
    sheets.map((sheet, s) => ({
      ...sheet,
      rows:
        s > 0
          ? sheet.rows
          : sheet.rows.map((row, r) => ({
              ...row,
              cells: row.cells.map((cell, c) => (typed.find(([tr, tc]) => tr === r && tc === c) ?? [0, 0, cell])[2]),
            })),
    })),
  );
const withOffers = (typed: Typed) => typedInto([purchase, curves, shop], typed);
const rankingOf = (sheets: ReturnType<typeof withOffers>): Cell[][] =>
  Array.from({ length: 8 }, (_, r) => ["A", "B", "C"].map((c) => sheets.get("Purchase")!.get(`${c}${15 + r}`) ?? ""));
const textsOf = (cells: ReadonlyMap<string, Cell>): string[] =>
  [...cells.values()].filter((c): c is string => typeof c === "string");

describe("the buyer's sheet", () => {
  const asIs = withOffers([]);

  it("names every offer by what the table calls it", () => {
    const names = ["in use, bi-metal", "offer P, carbide", "offer Q, carbide", "offer R, bi-metal"];
    const renamed = withOffers(names.map((_, i) => [4 + i, 0, `mill ${i}`] as const));
    for (const sheet of ["Purchase", "Curves"]) {
      const texts = textsOf(renamed.get(sheet)!);
      expect(texts.filter((t) => names.some((n) => t.includes(n)) || /offer [PQR]/.test(t))).toEqual([]);
      for (const i of [0, 1, 2, 3]) expect(texts.some((t) => t.includes(`mill ${i}`))).toBe(true);
    }
  });

  it.each([
    [1, "€385,00", "price of offer Q, carbide is text, €385,00: write 385"],
    [2, "6 500", "life of offer Q, carbide is text, 6 500: write 6500"],
    [3, "fast", "rate of offer Q, carbide is text, not a number"],
    [3, null, "offer Q, carbide gives no rate"],
    [5, "six", "rebate from of offer Q, carbide is text, not a number"],
  ] as const)("with a bad cell in column %i, %s, spoils that offer alone and says so", (column, value, says) => {
    const bad = withOffers([[6, column, value]]);
    expect(bad.get("Purchase")!.get("A12")).toBe(`3 ranked; not ranked: ${says}`);
    expect(rankingOf(bad).filter(([rank]) => typeof rank === "number")).toEqual(
      rankingOf(asIs)
        .filter(([, name]) => typeof name === "string" && name !== "" && !name.startsWith("offer Q"))
        .map(([, name, cost], i) => [i + 1, name, cost]),
    );
    for (const [name, cells] of [...bad].filter(([n]) => ["Purchase", "Curves"].includes(n)))
      for (const [at, cell] of cells)
        if (cell instanceof CellError) expect(`${name}!${at}`).toMatch(/^Curves!(D|[B-F]27$)/);
  });

  it("says in its one line that all are ranked, and has room for a rebate on each", () => {
    expect(asIs.get("Purchase")!.get("A12")).toBe("5 ranked");
    const rebates = withOffers([4, 5, 6, 7].flatMap((r) => [[r, 4, 0.05] as const, [r, 5, 4] as const]));
    expect(rebates.get("Purchase")!.get("A12")).toBe("8 ranked");
  });

  it.each([
    ["always dearer", [5, 1, 4000], [5, 3, 1], "never wins"],
    ["the same blade", [5, 1, 180], [5, 2, 2500], "always level", [5, 3, 2.1]],
    ["always better", [5, 1, 20], [5, 2, 9000], "always wins"],
  ] as const)("has words where there is no break-even, and no #N/A: %s", (_, a, b, word, c = undefined) => {
    const cells = withOffers([a, b, ...(c === undefined ? [] : [c])]).get("Purchase")!;
    expect(cells.get("E26")).toBe(word);
    // No price at which the dearer blade would pay: that is no good news, and the ranking says it as the function does.
    const errors = [...cells].flatMap(([at, cell]) => (cell instanceof CellError ? [[at, cell.text]] : []));
    expect(errors).toEqual(
      word === "never wins" ? [["F19", "never: the offer costs more even if the blade were free"]] : [],
    );
  });
});

describe("the estimator's sheet", () => {
  const read = (typed: Typed) => {
    const cells = typedInto([estimate, shop], typed).get("Estimate")!;
    return { cells, list: ["D24", "D25", "D26"].map((at) => cells.get(at) ?? "") };
  };

  it("lists each refused line with its row, its own text and the sentence, and sums the others", () => {
    const asIs = read([]);
    expect(asIs.list).toEqual(["none", "", ""]);
    const { cells, list } = read([
      [6, 0, "roud 7"],
      [18, 1, "unobtainium"],
    ]);
    expect(list[0]).toMatch(/^row 7: roud 7: .*unknown word "roud"/);
    expect(list[1]).toMatch(/^row 19: round 120 mm: .*unobtainium/);
    expect(list[2]).toBe("");
    expect(cells.get("B26")).toBe("15 priced, 2 refused");
    const price = (at: string): number => Number(asIs.cells.get(at));
    expect(cells.get("B33")).toBeCloseTo(price("B33") - price("G7") - price("G19"), 9);
  });

  it("counts a blank line neither as priced nor as refused", () => {
    const { cells, list } = read([[6, 0, null]]);
    expect(list).toEqual(["none", "", ""]);
    expect(cells.get("B26")).toBe("16 priced, 0 refused");
  });
});
