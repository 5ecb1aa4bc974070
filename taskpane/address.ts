import type { Place } from "./sheet";

const letters = (column: number): string => (column < 26 ? "" : letters(Math.floor(column / 26) - 1)) + String.fromCharCode(65 + (column % 26));

/** "C7" of a row and column counted from 0. */
export const a1 = (row: number, column: number): string => `${letters(column)}${row + 1}`;

/** "C5:D9", or "C5" for a single cell. */
export const block = ({ row, column }: Place, rows = 1, columns = 1): string => (rows * columns === 1 ? a1(row, column) : `${a1(row, column)}:${a1(row + rows - 1, column + columns - 1)}`);

/** A sheet's name as a formula writes it. */
const quoted = (sheet: string): string => (/^[A-Za-z_][A-Za-z_.]*$/.test(sheet) ? sheet : `'${sheet.replace(/'/g, "''")}'`);

/** "Sheet1!C7" as it is shown. */
export const shown = (place: Place, rows = 1, columns = 1): string => `${place.sheet}!${block(place, rows, columns)}`;

/** "='Order lines'!$A$1:$C$42", for a defined name. */
export const absolute = (place: Place, rows: number, columns: number): string => `${quoted(place.sheet)}!${block(place, rows, columns).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2")}`;

/** The first of name, name_2, name_3 … that is not taken; names know no case. */
export function freeName(wanted: string, taken: readonly string[]): string {
  const used = new Set(taken.map((t) => t.toLowerCase()));
  let name = wanted;
  for (let i = 2; used.has(name.toLowerCase()); i += 1) name = `${wanted}_${i}`;
  return name;
}
