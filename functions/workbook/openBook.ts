import type { IWorkbookData } from "@univerjs/core";
import type { Book } from "./book";
import { bookLooks } from "./bookLooks";
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
  const kept = beyond(book, formulas, knows);
  return {
    file,
    parts,
    book,
    formulas,
    kept,
    data: gridBook({ book, formulas, kept: new Set(kept.keys()), looks: await bookLooks(bytes) }),
  };
}
