import type { BookTable } from "./book";
import { callsOwn, mended, toFile } from "./formulaText";
import { openParts } from "./openParts";
import { partText, relationsOf, type Parts } from "./parts";
import { packParts } from "./patchBook";
import { readBook } from "./readBook";
import { edited, elements, escape, placedXml, prefixOf, startTag } from "./xml";

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

/** Without array="1" Excel puts an @ before a custom function in each new row. */
const columnFormula = (stored: string, prefix: string): string =>
  `<${prefix}calculatedColumnFormula${callsOwn(stored) ? ' array="1"' : ""}>${escape(stored)}</${prefix}calculatedColumnFormula>`;

/** The tables of a workbook with the formulas of their columns that call our functions in the form in which Excel keeps them. */
export function mendedTables(parts: Parts): Parts {
  const { sheets } = readBook(parts);
  const tables = sheets.flatMap(({ part }) => relationsOf(parts, part).filter((r) => r.type.endsWith("/table")));
  return Object.fromEntries(
    tables.flatMap(({ target }) => {
      const xml = partText(parts, target);
      const edits = elements(placedXml(xml, target), "calculatedColumnFormula").flatMap((e) =>
        callsOwn(e.text) ? [{ start: e.start, end: e.end, text: columnFormula(mended(e.text), prefixOf(e.name)) }] : [],
      );
      const text = edited(xml, edits);
      return text === xml ? [] : [[target, new TextEncoder().encode(text)] as const];
    }),
  );
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
                  text: `${startTag(xml, column)}>${columnFormula(toFile(formulas[i]), "")}</tableColumn>`,
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
