import type { CellValue } from "./book";
import { addressOf } from "../formula/cellAddress";
import { withChartCaches } from "./chartCaches";
import { openParts } from "./openParts";
import { changesOf, packParts, patchBook } from "./patchBook";
import { readBook } from "./readBook";
import { recalculate } from "./recalculate";
import type { SampleBook } from "./samples/sheet";
import { writeBook } from "./writeBook";

/** Another computer's sine may differ in the last digit; the file is to be the same there, and shows fewer digits anyway. */
const kept = (value: CellValue): CellValue => (typeof value === "number" ? Number(value.toPrecision(13)) : value);

/** A sample workbook with the result of every formula in it: written, read back, calculated, and its values put in. */
export async function makeSample(sample: SampleBook): Promise<Uint8Array> {
  const parts = openParts(await writeBook(sample));
  const book = readBook(parts);
  const results = (await recalculate(book)).map((r) => ({ ...r, is: kept(r.is) }));
  const values = new Map<string, CellValue>([
    ...book.sheets.flatMap((sheet) =>
      sheet.cells.map((c) => [`${sheet.name}!${addressOf(c.row, c.column)}`, c.value] as const),
    ),
    ...results.map((r) => [`${r.sheet}!${addressOf(r.row, r.column)}`, r.is] as const),
  ]);
  return packParts(
    withChartCaches(
      patchBook(parts, changesOf(book, results)),
      (sheet, address) => values.get(`${sheet}!${address}`) ?? null,
    ),
  );
}
