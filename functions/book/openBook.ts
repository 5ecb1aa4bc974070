import type { IWorkbookData } from "@univerjs/core";
import type { Book } from "./book";
import { bookLooks } from "./bookLooks";
import { addressOf } from "./cellAddress";
import { knows } from "./engine";
import { beyond, formulasOf, type FormulaCell } from "./formulas";
import { gridBook } from "./gridBook";
import { openParts } from "./openParts";
import type { Parts } from "./parts";
import { readBook } from "./readBook";

/** A workbook that a person has opened: what its file holds, and what the grid is given of it. */
export interface OpenedBook {
  readonly file: string;
  readonly parts: Parts;
  readonly book: Book;
  readonly formulas: readonly FormulaCell[];
  /** Formulas that cannot be calculated here, each with the reason: their cells keep their last value. */
  readonly kept: ReadonlyMap<FormulaCell, string>;
  readonly data: Partial<IWorkbookData>;
}

/** @throws BookFault what is no workbook, or cannot be read rightly */
export async function openBook(file: string, bytes: Uint8Array): Promise<OpenedBook> {
  const parts = openParts(bytes);
  const book = readBook(parts);
  const formulas = formulasOf(book);
  const names = new Set(book.names.map((n) => n.name.toLowerCase()));
  const kept = new Map(formulas.flatMap((f) => {
    const why = beyond(f, knows, names);
    return why === undefined ? [] : [[f, `${addressOf(f.cell.row, f.cell.column)} on ${f.sheet.name} ${why}`] as const];
  }));
  return { file, parts, book, formulas, kept, data: gridBook({ book, formulas, kept: new Set(kept.keys()), looks: await bookLooks(bytes) }) };
}
