import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { call } from "../../functions/bind/call";
import { catalogue } from "../../functions/catalogue";
import { CellError, type Cell, type Range } from "../../functions/kinds/cell";
import { printCell } from "../../functions/reference/describe";
import { parseCall } from "../../functions/bind/parseCall";
import { Memo } from "../../functions/bind/memo";
import { callsIn } from "../../taskpane/sheet/callsIn";
import { rowFormula } from "../../taskpane/sheet/rowFormula";
import { shopCells } from "../../taskpane/sheet/shopCells";

/** docs/acceptance.md: every formula that has an expected result there is run, on the cells that the page says to type. */

const page = readFileSync("docs/acceptance.md", "utf8");

/** As Excel takes what is typed: an apostrophe is text, 3/4 a day (4 March 2026, or 3 April), digits a number. */
function typed(text: string): Cell {
  if (text === "") return null;
  if (text.startsWith("'")) return text.slice(1);
  if (text === "=NA()") return new CellError("#N/A");
  if (text === "3/4") return 46085;
  return /^\d+$/.test(text) ? Number(text) : text;
}

const table = [...page.slice(0, page.indexOf("## Cells")).matchAll(/^\| (\d) \|((?:[^|\n]*\|){6})$/gm)].map(
  ([, , cells]) =>
    cells!
      .split("|")
      .slice(0, 6)
      .map((c) => typed(c.trim())),
);
const block = shopCells("inch").map((row) =>
  row.map((c) => (typeof c === "number" ? c : "text" in c ? c.text : c.formula)),
);

const corner = (a: string): readonly [number, number] => [Number(a.slice(1)) - 1, a.charCodeAt(0) - 65];
const blockColumn = 10; // K
const cellAt = (row: number, column: number): Cell =>
  column >= blockColumn ? (block[row]?.[column - blockColumn] ?? null) : (table[row]?.[column] ?? null);

function argument(text: string): Range | null {
  if (text === "") return null;
  if (text === "Shop") return block;
  const chosen = /^CHOOSE\(\{1,2,3\},(.+)\)$/.exec(text);
  if (chosen !== null) return [chosen[1]!.split(",").map(Number)];
  if (!/^[A-Z]\d/.test(text)) return parseCall(`AREA(${text})`).args[0]!;
  const [from, to = from] = text.split(":") as [string, string?];
  const [[top, left], [bottom, right]] = [corner(from), corner(to!)];
  return Array.from({ length: bottom - top + 1 }, (_, r) =>
    Array.from({ length: right - left + 1 }, (__, c) => cellAt(top + r, left + c)),
  );
}

/** With a decimal comma, arguments are separated by semicolons. */
const isComma = (formula: string, printed: string): boolean => formula.includes(";") || /^\d+,\d+$/.test(printed);

function run(formula: string): Cell[][] {
  const one = callsIn(formula).at(-1)!;
  expect(one.whole).toBe(true);
  return call(
    catalogue.find((e) => e.name === one.name)!,
    one.args.map(argument),
    new Memo(),
  );
}

const expected = [...page.matchAll(/`(=SAW\.[^`]+)`(?:, which)? gives \*\*([^*]+)\*\*(?:: _([^_]+)_)?/g)].map(
  ([, formula, printed, says]) => [formula!, printed!, says ?? ""] as const,
);

describe("docs/acceptance.md", () => {
  it.each(expected)("%s gives %s %s", (formula, printed, says) => {
    const comma = isComma(formula, printed);
    const cells = run(comma ? formula.replace(/(\d),(\d+)\)$/, "$1.$2)").replace(/;/g, ",") : formula);
    const shows = cells.map((row) => row.map((c) => (c === "" ? "(blank)" : printCell(c))).join(" ; ")).join(" / ");
    expect(comma ? shows.replace(".", ",") : shows).toBe(printed);
    const [[first]] = cells as [[Cell]];
    if (says !== "") expect(first instanceof CellError ? first.text : "").toContain(says);
  });

  it("has its table, its rows numbered in order, and a result for every function it calls", () => {
    expect(table).toHaveLength(7);
    const numbers = [...page.matchAll(/^\| (\d+) \| \S.*☐ \|$/gm)].map((m) => Number(m[1]));
    expect(numbers).toEqual(Array.from({ length: 38 }, (_, i) => i + 1));
    expect(expected.length).toBeGreaterThanOrEqual(20);
    const names = new Set(catalogue.map((e) => e.name));
    for (const [, name] of page.matchAll(/SAW\.([A-Z]+)\(/g)) expect(names.has(name!), name).toBe(true);
  });

  it("says that nothing of it has been run in Excel, until somebody has", () => {
    expect(page).toMatch(/Nothing on this page has been run in real Excel by us yet/);
  });

  it("says which formula the pane writes beside the table", () => {
    const around = {
      top: 0,
      values: table.slice(0, 3).map((row) => row.map((c) => (c === null || c instanceof CellError ? "" : c))),
    };
    const at = { sheet: "S", row: 2, column: 4, rows: 1, columns: 1, areas: 1, value: "", formula: "", around };
    expect(page).toContain(
      `E3 holds \`${rowFormula(
        catalogue.find((e) => e.name === "CUTRATE")!,
        at,
        new Map(),
        { units: "inch", shop: undefined },
      )(2)}\``,
    );
  });

  it("quotes sentences that the functions and the pane do say", () => {
    expect(String((run("=SAW.AREA(A5)")[0]![0] as CellError).text)).toMatch(/did you mean "round"/);
    expect(
      (
        call(
          catalogue.find((e) => e.name === "AREA")!,
          [[[new CellError("#REF!")]]],
          new Memo(),
        )[0]![0] as CellError
      ).text,
    ).toBe("section is #REF!");
  });
});
