import { writeXlsx, type Cell, type CellStyle, type Sheet, type WriteSheet } from "hucre";
import { storedError, type Book, type CellValue } from "./book";
import { addressOf, areaOf } from "../formula/cellAddress";
import { isError } from "../formula/cellErrors";
import { BookFault } from "./fault";
import { finishBook } from "./finishBook";
import type { Parts } from "./parts";
import { packParts } from "./patchBook";
import { readLooks } from "./readLooks";
import { seenFormat } from "./seenFormat";
import type { Recalculated } from "./recalculate";

/**
 * A new workbook of the chosen sheets as values, for people who are to see these and nothing else. It is not the old
 * file with parts taken out: only what is named here is carried over (values, looks, widths, heights, merged cells,
 * frozen rows, paper), so whatever else a file may hold cannot come along. Hidden rows and columns are left out.
 */

type Values = ReadonlyMap<string, CellValue>;

/** What stands in a sheet's cells once it is calculated. */
function valuesOf(sheet: Book["sheets"][number], results: readonly Recalculated[]): Values {
  const values = new Map<string, CellValue>(sheet.cells.map((c) => [addressOf(c.row, c.column), c.value]));
  for (const r of results) if (r.sheet === sheet.name) values.set(addressOf(r.row, r.column), r.is);
  return values;
}

/** Where each row, or column, of the old sheet stands in the new one; the hidden ones nowhere. */
const places = (count: number, isHidden: (i: number) => boolean): readonly (number | undefined)[] => {
  let next = 0;
  return Array.from({ length: count }, (_, i) => (isHidden(i) ? undefined : next++));
};

const plainStyle = ({ font, fill, border, alignment }: CellStyle, numFmt: string | undefined): CellStyle => ({
  ...(font && { font }),
  ...(fill && { fill }),
  ...(border && { border }),
  ...(alignment && { alignment }),
  ...(numFmt !== undefined && { numFmt }),
});

/** A merged area keeps what is left of it between its visible rows and columns. */
function merges(sheet: Sheet, rows: Places, columns: Places): NonNullable<WriteSheet["merges"]> {
  const left = (places: Places, from: number, to: number): readonly number[] =>
    places.slice(from, to + 1).filter((p): p is number => p !== undefined);
  return (sheet.merges ?? []).flatMap((m) => {
    const [r, c] = [left(rows, m.startRow, m.endRow), left(columns, m.startCol, m.endCol)];
    return r.length * c.length < 2
      ? []
      : [{ startRow: r[0]!, endRow: r[r.length - 1]!, startCol: c[0]!, endCol: c[c.length - 1]! }];
  });
}

/** A cell as a value with its looks; nothing where it has neither. */
function cellOf(of: CellValue, style: CellStyle | undefined): Partial<Cell> | undefined {
  const { isShown, format } = seenFormat(of, style?.numFmt);
  const value = isShown ? of : null;
  if (value === null && style === undefined) return undefined;
  const type = value === null ? "empty" : isError(value) ? "error" : (typeof value as "string" | "number" | "boolean");
  return { value, type, ...(style && { style: plainStyle(style, format) }) };
}

type Places = readonly (number | undefined)[];

/** Under a merged area only its first cell is seen. */
const isCovered = ({ merges: areas = [] }: Sheet, row: number, column: number): boolean =>
  areas.some(
    (m) =>
      row >= m.startRow &&
      row <= m.endRow &&
      column >= m.startCol &&
      column <= m.endCol &&
      (row !== m.startRow || column !== m.startCol),
  );

/** Cells that hold something or have a look of their own; not every place between them, of which a sheet may have billions. */
function cellsOf(old: Sheet, values: Values, rows: Places, columns: Places): NonNullable<WriteSheet["cells"]> {
  const cells: NonNullable<WriteSheet["cells"]> = new Map();
  for (const [r, c] of placesIn(old, values)) {
    const [row, column] = [rows[r], columns[c]];
    if (row === undefined || column === undefined) continue;
    if (isCovered(old, r, c)) continue;
    const { style } = old.cells?.get(`${r},${c}`) ?? {};
    const value = storedError(values.get(addressOf(r, c)) ?? null);
    const cell = cellOf(value, style);
    if (cell !== undefined) cells.set(`${row},${column}`, cell);
  }
  return cells;
}

/** The cells of a sheet that have a value or a look. */
const placesIn = (old: Sheet, values: Values): readonly (readonly [row: number, column: number])[] =>
  [...values.keys()]
    .map((a) => areaOf(a)!)
    .map((a) => [a.bottom, a.right] as const)
    .concat([...(old.cells?.keys() ?? [])].map((k) => k.split(",").map(Number) as [number, number]));

/** How far a sheet reaches. */
const reach = (old: Sheet, values: Values): readonly [rows: number, columns: number] =>
  placesIn(old, values).reduce<readonly [number, number]>(
    ([rows, columns], [r, c]) => [Math.max(rows, r + 1), Math.max(columns, c + 1)],
    [0, 0],
  );

/** Rows and columns thinner than a reader sees count as hidden: height in points, width in characters. */
const leastHeight = 1.5;
const leastWidth = 0.3;
const isHidden = (size: number | undefined, least: number, hidden: boolean | undefined): boolean =>
  hidden === true || (size !== undefined && size < least);

function sheetOf(old: Sheet, values: Values): WriteSheet {
  const [height, width] = reach(old, values);
  const rows = places(height, (i) => isHidden(old.rowDefs?.get(i)?.height, leastHeight, old.rowDefs?.get(i)?.hidden));
  const columns = places(width, (i) => isHidden(old.columns?.[i]?.width, leastWidth, old.columns?.[i]?.hidden));
  const { freezePane: freeze, pageSetup } = old;
  const seen = (of: Places, count = 0): number => of.slice(0, count).filter((p) => p !== undefined).length;
  return {
    name: old.name,
    cells: cellsOf(old, values, rows, columns),
    columns: columns.flatMap((place, i) =>
      place === undefined ? [] : [{ ...(old.columns?.[i]?.width !== undefined && { width: old.columns[i].width }) }],
    ),
    rowDefs: new Map(
      [...(old.rowDefs ?? [])].flatMap(([i, { height: h }]) =>
        rows[i] === undefined || h === undefined ? [] : [[rows[i], { height: h }]],
      ),
    ),
    merges: merges(old, rows, columns),
    ...(freeze && { freezePane: { rows: seen(rows, freeze.rows), columns: seen(columns, freeze.columns) } }),
    ...(pageSetup && {
      pageSetup: {
        ...(pageSetup.orientation && { orientation: pageSetup.orientation }),
        ...(pageSetup.paperSize && { paperSize: pageSetup.paperSize }),
      },
    }),
  };
}

/**
 * The chosen sheets as values in a workbook of their own.
 * @throws BookFault a name that is no sheet
 */
export async function sendBook({
  parts,
  book,
  results,
  only,
}: {
  readonly parts: Parts;
  readonly book: Book;
  readonly results: readonly Recalculated[];
  readonly only: readonly string[];
}): Promise<Uint8Array> {
  const chosen = only.map((name) => {
    const sheet = book.sheets.find((s) => s.name.toLowerCase() === name.trim().toLowerCase());
    if (sheet === undefined)
      throw new BookFault(`has no sheet "${name}"; its sheets are ${book.sheets.map((s) => s.name).join(", ")}`);
    return sheet;
  });
  const looks = await readLooks(
    packParts(parts),
    chosen.map((s) => s.name),
  );
  const sheets = chosen.map((sheet) =>
    sheetOf(
      looks.sheets.find((l) => l.name === sheet.name)!,
      valuesOf(sheet, results),
    ),
  );
  return finishBook(await writeXlsx({ sheets }));
}
