import type { BookTable } from "./book";
import { toFile } from "./formulaText";
import { openParts } from "./openParts";
import { partText, relationsOf } from "./parts";
import { packParts } from "./patchBook";
import { readBook } from "./readBook";
import { edited, elements, escape, placedXml, startTag } from "./xml";

/** The one formula of each column of a table; undefined where its cells differ or hold none. */
function columnFormulas(
  { area, columns, headers, totals }: BookTable,
  textAt: (row: number, column: number) => string | undefined,
): readonly (string | undefined)[] {
  const rows = Array.from(
    { length: area.bottom - area.top + 1 - Number(headers) - Number(totals) },
    (_, i) => area.top + Number(headers) + i,
  );
  return columns.map((_, i) => {
    const texts = new Set(rows.map((row) => textAt(row, area.left + i)));
    return texts.size === 1 ? [...texts][0] : undefined;
  });
}

/** Tells each table the formulas of its columns, so that Excel fills them into a new row. */
export function withCalculatedColumns(bytes: Uint8Array): Uint8Array {
  const parts = openParts(bytes);
  const book = readBook(parts);
  const changed = book.sheets.flatMap((sheet) => {
    const texts = new Map(sheet.cells.map((c) => [`${c.row},${c.column}`, c.formula?.text]));
    return relationsOf(parts, sheet.part)
      .filter((r) => r.type.endsWith("/table"))
      .map(({ target }) => {
        const xml = partText(parts, target);
        const root = placedXml(xml, target);
        const table = book.tables.find((t) => t.name === root.attributes["displayName"])!;
        const formulas = columnFormulas(table, (row, column) => texts.get(`${row},${column}`));
        const edits = elements(root, "tableColumn").flatMap((column, i) =>
          formulas[i] === undefined
            ? []
            : [
                {
                  start: column.start,
                  end: column.end,
                  text: `${startTag(xml, column)}><calculatedColumnFormula>${escape(toFile(formulas[i]))}</calculatedColumnFormula></tableColumn>`,
                },
              ],
        );
        return [target, edited(xml, edits)] as const;
      });
  });
  return packParts({
    ...parts,
    ...Object.fromEntries(changed.map(([path, xml]) => [path, new TextEncoder().encode(xml)])),
  });
}
