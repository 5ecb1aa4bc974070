import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, it } from "vitest";
import { catalogue } from "../../functions/catalogue";
import { addressOf } from "../../functions/formula/cellAddress";
import { exampleResult } from "../../functions/reference/describe";
import { folder } from "../functions/workbook/fixture";
import { hands, ready } from "./hands";
import { browserPath, openTryit } from "./open";
import { expectShown } from "./shown";

/** Every example of docs/functions.md, typed by the keyboard into a sheet of one's own, as a person tries a function. */

interface GridCell {
  getRawValue(): unknown;
  getValue(): unknown;
  getFormula(): string;
}
declare const window: {
  kerfsheetGrid: {
    getActiveWorkbook(): { getActiveSheet(): { getRange(row: number, column: number): GridCell } };
  };
};

const column = 1;
let free = 1;
/** One below the other, with a row between. */
const examples = catalogue
  .flatMap((entry) => entry.examples)
  .map((formula) => {
    const expected = exampleResult(catalogue, formula);
    const row = free;
    free += expected.length + 1;
    return { formula, expected, row };
  });

describe.runIf(browserPath !== undefined)("every example of every function, typed", () => {
  let opened: Awaited<ReturnType<typeof openTryit>>;
  let shown: unknown[][][];

  beforeAll(async () => {
    opened = await openTryit();
    const { page } = opened;
    const dir = folder();
    const { go, select } = hands(() => page, dir);
    const file = join(dir, "own.csv");
    writeFileSync(file, `${"typed here\r\n".repeat(free)}`);
    await page.setInputFiles("#file", file);
    await page.waitForFunction(() => document.getElementById("book")!.textContent.startsWith("own.xlsx"));
    await go("grid");
    for (const { formula, row } of examples) {
      await select(addressOf(row, column));
      // A key opens the cell; the rest comes as fast as the page takes it.
      await page.keyboard.press("=");
      await page.keyboard.insertText(formula);
      await page.keyboard.press("Enter");
    }
    // The last is calculated last.
    await page.waitForFunction(
      ([row, at]) => {
        const cell = window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getRange(row!, at!);
        return cell.getFormula() !== "" && (cell.getRawValue() ?? "") !== "";
      },
      [examples[examples.length - 1]!.row, column],
    );
    await ready(page);
    shown = await page.evaluate(
      (blocks) => {
        const sheet = window.kerfsheetGrid.getActiveWorkbook().getActiveSheet();
        return blocks.map(([top, left, height, width]) =>
          Array.from({ length: height! }, (_, r) =>
            Array.from({ length: width! }, (__, c) => {
              const cell = sheet.getRange(top! + r, left! + c);
              // A spilled cell has no value of its own: what it shows.
              return cell.getRawValue() ?? String(cell.getValue() ?? "");
            }),
          ),
        );
      },
      examples.map(({ row, expected }) => [row, column, expected.length, expected[0]!.length]),
    );
  });
  afterAll(() => opened.close());

  it.each(examples.map((example, i) => [example.formula, example.expected, i] as const))("=%s", (_, expected, i) => {
    expected.forEach((cells, r) => {
      cells.forEach((cell, c) => {
        expectShown(shown[i]![r]![c], cell, addressOf(r, c));
      });
    });
  });
});
