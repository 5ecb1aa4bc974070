import { writeXlsx } from "hucre";
import { BookFault } from "./fault";
import { openBook, type OpenedBook } from "./openBook";
import { finishBook } from "./finishBook";
import { textRows } from "./textRows";

/** Judgement: what the page shows and calculates without hanging. */
const mostRows = 50_000;

/**
 * A .csv file as a workbook of one sheet. Everything in it is a value: a text that begins with "=" is no formula.
 * @throws BookFault what is no text, or too long
 */
export async function textBook(file: string, bytes: Uint8Array): Promise<OpenedBook> {
  const text = new TextDecoder().decode(bytes);
  if (text.includes("\0")) throw new BookFault("is not a text file");
  const { rows } = textRows(text);
  if (rows.length > mostRows)
    throw new BookFault(
      `has ${rows.length.toLocaleString("en")} lines; at most ${mostRows.toLocaleString("en")} are opened`,
    );
  const cells = new Map(
    rows.flatMap((row, r) =>
      row.flatMap((value, c) =>
        value === ""
          ? []
          : [
              [
                `${r},${c}`,
                { value, type: typeof value === "number" ? ("number" as const) : ("string" as const) },
              ] as const,
            ],
      ),
    ),
  );
  const stem = file.replace(/\.[^.]*$/, "");
  return openBook(`${stem}.xlsx`, finishBook(await writeXlsx({ sheets: [{ name: "Lines", cells }] })));
}
