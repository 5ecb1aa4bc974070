import { openBook, type OpenedBook } from "./openBook";
import { demoBook } from "./samples/books";
import { writeBook } from "./writeBook";

/** The try-it page's own workbook as a file, so that it is saved, sent and kept like any other. */
export const startBook = async (): Promise<OpenedBook> =>
  openBook("kerfsheet.xlsx", await writeBook({ file: "kerfsheet.xlsx", title: "Kerfsheet", sheets: demoBook }));
