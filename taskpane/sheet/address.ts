import { addressOf } from "../../functions/formula/cellAddress";
import { sheetNamed, tokensOf } from "../../functions/formula/tokens";
import type { Place } from "./sheet";

/** "C5:D9", or "C5" for a single cell. */
export const block = ({ row, column }: Place, rows = 1, columns = 1): string =>
  rows * columns === 1
    ? addressOf(row, column)
    : `${addressOf(row, column)}:${addressOf(row + rows - 1, column + columns - 1)}`;

/** A sheet's name as a formula writes it. */
const quoted = (sheet: string): string =>
  /^[A-Za-z_][A-Za-z_.]*$/.test(sheet) ? sheet : `'${sheet.replace(/'/g, "''")}'`;

/** "Sheet1!C7" as it is shown. */
export const shown = (place: Place, rows = 1, columns = 1): string => `${place.sheet}!${block(place, rows, columns)}`;

/** "='Order lines'!$A$1:$C$42", for a defined name. */
export const absolute = (place: Place, rows: number, columns: number): string =>
  `${quoted(place.sheet)}!${block(place, rows, columns).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2")}`;

/** The sheet that a reference names, if any, and the rest of it: 'Bill''s list'!A1. */
export function splitReference(reference: string): { readonly sheet: string | undefined; readonly rest: string } {
  const [first] = tokensOf(reference);
  return first?.kind === "sheet"
    ? { sheet: sheetNamed(first), rest: reference.slice(first.end) }
    : { sheet: undefined, rest: reference };
}

export const isCells = (reference: string): boolean => tokensOf(reference)[0]?.kind === "reference";

/** The same reference with its sheet named; a defined name stays as it is. */
export const onSheet = (reference: string, sheet: string): string =>
  isCells(reference) ? `${quoted(sheet)}!${reference}` : reference;

/** The first of name, name_2, name_3 … that is not taken; names know no case. */
export function freeName(
  wanted: string,
  taken: readonly string[],
  ending = (i: number): string => (i === 1 ? "" : `_${i}`),
): string {
  const used = new Set(taken.map((t) => t.toLowerCase()));
  for (let i = 1; ; i += 1) {
    const name = wanted.slice(0, mostName - ending(i).length).replace(/[\uD800-\uDBFF]$/, "") + ending(i);
    if (!used.has(name.toLowerCase())) return name;
  }
}

/** A sheet's name may have this many characters; a defined name more. */
const mostName = 31;

/** "Quote values", "Quote values 2" … */
export const valuesName = (sheet: string, taken: readonly string[]): string =>
  freeName(sheet, taken, (i) => ` values${i === 1 ? "" : ` ${i}`}`);
