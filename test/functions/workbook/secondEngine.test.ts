import { readFileSync, readdirSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { initSync, Model } from "@ironcalc/wasm";
import { describe, expect, it } from "vitest";
import type { Book, CellValue } from "../../../functions/workbook/book";
import { formulasOf } from "../../../functions/workbook/formulas";
import { openParts } from "../../../functions/workbook/openParts";
import { readBook } from "../../../functions/workbook/readBook";

/**
 * The native formulas of the samples by an engine of other authors (IronCalc, written in Rust): cells with our functions
 * go in as the values that the file keeps, all other formulas are calculated anew and compared with the file.
 */

initSync({ module: readFileSync(createRequire(import.meta.url).resolve("@ironcalc/wasm/wasm_bg.wasm")) });

const input = (value: CellValue): string =>
  typeof value === "string"
    ? `'${value}`
    : typeof value === "boolean"
      ? String(value).toUpperCase()
      : String(value ?? "");

interface Difference {
  readonly cell: string;
  readonly file: CellValue;
  readonly engine: string;
}

function compare(book: Book): { readonly native: number; readonly differences: readonly Difference[] } {
  const model = new Model("book", "en", "UTC", "en");
  book.sheets.forEach((sheet, i) => {
    if (i > 0) model.newSheet();
    model.renameSheet(i, sheet.name);
  });
  for (const { name, refersTo } of book.names.filter((n) => !n.name.startsWith("_xlnm.")))
    model.newDefinedName(name, undefined, refersTo);
  const native = formulasOf(book).filter(({ engine }) => !/\bSAW\./.test(engine));
  const isNative = new Set(native.map((f) => f.cell));
  // A constant error is typed as a formula: =NA().
  book.sheets.forEach((sheet, i) => {
    for (const cell of sheet.cells)
      if (!isNative.has(cell))
        model.setUserInput(
          i,
          cell.row + 1,
          cell.column + 1,
          typeof cell.value === "string" && /^#/.test(cell.value)
            ? cell.value === "#N/A"
              ? "=NA()"
              : "=1/0"
            : input(cell.value),
        );
  });
  for (const { sheet, cell, engine } of native)
    model.setUserInput(book.sheets.indexOf(sheet), cell.row + 1, cell.column + 1, `=${engine}`);
  model.evaluate();
  const differences = native.flatMap(({ sheet, cell }): Difference[] => {
    const at = [book.sheets.indexOf(sheet), cell.row + 1, cell.column + 1] as const;
    const shown = model.getFormattedCellValue(...at);
    const number = Number(shown.replace(/,/g, ""));
    const same =
      typeof cell.value === "number"
        ? Math.abs(number - cell.value) <= 1e-8 * Math.max(1, Math.abs(cell.value))
        : shown === (typeof cell.value === "boolean" ? String(cell.value).toUpperCase() : (cell.value ?? ""));
    return same
      ? []
      : [
          {
            cell: `${sheet.name} ${cell.row + 1},${cell.column + 1} =${engine(cell)}`,
            file: cell.value,
            engine: shown,
          },
        ];
  });
  return { native: native.length, differences };
}

const engine = (cell: Book["sheets"][number]["cells"][number]): string => cell.formula!.text;

describe("native formulas, by a second engine", () => {
  it.each(readdirSync("docs/samples").filter((f) => f.endsWith(".xlsx")))("%s: 0 differences", (file) => {
    const { native, differences } = compare(readBook(openParts(readFileSync(join("docs/samples", file)))));
    expect(differences).toEqual([]);
    expect(native).toBeGreaterThan(0);
  });

  it("finds a value that is wrong", () => {
    const book = readBook(openParts(readFileSync("docs/samples/estimate.xlsx")));
    const wrong = {
      ...book,
      sheets: book.sheets.map((s) => ({
        ...s,
        cells: s.cells.map((c) =>
          c.formula !== undefined && typeof c.value === "number" && !/SAW/.test(c.formula.text)
            ? { ...c, value: c.value + 1 }
            : c,
        ),
      })),
    };
    expect(compare(wrong).differences.length).toBeGreaterThan(0);
  });
});
