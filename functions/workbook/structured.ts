import type { BookTable } from "./book";
import { columnName, columnOf, type Area } from "../formula/cellAddress";
import { BookFault } from "./fault";

/** References by table and column, as Excel keeps them in files: Lines[[#This Row],[size]]; the engine knows only addresses. */

/** A sheet's name as formulas write it. */
export const quotedSheet = (name: string): string => `'${name.replace(/'/g, "''")}'`;

const absolute = ({ top, left, bottom, right }: Area): string =>
  [[left, top], ...(left === right && top === bottom ? [] : [[right, bottom]])]
    .map(([column, row]) => `$${columnName(column!)}$${row! + 1}`)
    .join(":");

/** The data rows of a table. */
export const tableData = (table: BookTable): string => `${quotedSheet(table.sheet)}!${absolute(dataOf(table))}`;

const dataOf = ({ area, headers, totals }: BookTable): Area => ({
  ...area,
  top: area.top + Number(headers),
  bottom: area.bottom - Number(totals),
});

/** A line break in a heading is _x000a_ in the table's part and a blank in a formula's words. */
const plainName = (name: string): string =>
  name
    .replace(/'(.)/g, "$1")
    .replace(/_x000[aAdD]_|\s+/g, " ")
    .toLowerCase();

function rowsOf(table: BookTable, specs: readonly string[], row: number): readonly [top: number, bottom: number] {
  const data = dataOf(table);
  const parts: Readonly<Record<string, readonly [number, number]>> = {
    "#all": [table.area.top, table.area.bottom],
    "#data": [data.top, data.bottom],
    "#headers": [table.area.top, table.area.top],
    "#totals": [table.area.bottom, table.area.bottom],
    "#this row": [row, row],
  };
  const wanted = specs.length === 0 ? [parts["#data"]!] : specs.map((s) => parts[s.toLowerCase()] ?? [-1, -1]);
  return [Math.min(...wanted.map(([top]) => top)), Math.max(...wanted.map(([, bottom]) => bottom))];
}

/** What stands between the outer brackets, as row words and first and last column. */
function partsOf(inside: string): { readonly specs: readonly string[]; readonly columns: readonly string[] } {
  const short = /^@\s*(.*)$/s.exec(inside);
  const body = short === null ? inside : short[1]!;
  const bracketed = [...body.matchAll(/\[((?:'.|[^[\]'])*)\]/g)].map((m) => m[1]!);
  const items = bracketed.length > 0 ? bracketed : body.trim() === "" ? [] : [body.trim()];
  const specs = items.filter((i) => i.startsWith("#"));
  return { specs: short === null ? specs : ["#this row", ...specs], columns: items.filter((i) => !i.startsWith("#")) };
}

function areaText(table: BookTable, inside: string, { sheet, row }: Where): string {
  const { specs, columns } = partsOf(inside);
  const at = columns.map((c) => table.columns.findIndex((known) => plainName(known) === plainName(c)));
  if (at.includes(-1)) throw new BookFault(`names a column that table ${table.name} does not have: ${inside}`);
  const [top, bottom] = rowsOf(table, specs, row);
  if (top < 0) throw new BookFault(`names a part that tables do not have: ${inside}`);
  const [first = 0, last = at.length === 0 ? table.columns.length - 1 : first] = at;
  return `${table.sheet === sheet ? "" : `${quotedSheet(table.sheet)}!`}${absolute({ top, bottom, left: table.area.left + first, right: table.area.left + last })}`;
}

/** Where the bracket that opens at `from` closes. */
function closing(text: string, from: number): number {
  let depth = 0;
  for (let i = from; i < text.length; i += 1) {
    if (text[i] === "'") i += 1;
    else if (text[i] === "[") depth += 1;
    else if (text[i] === "]" && (depth -= 1) === 0) return i;
  }
  return -1;
}

/** Where a formula stands: its sheet, and its row from 0. */
export interface Where {
  readonly sheet: string;
  readonly row: number;
}

/** Writes the table references of a formula as addresses. */
export function withoutTables(formula: string, tables: readonly BookTable[], where: Where): string {
  if (!formula.includes("[")) return formula;
  const start = /("(?:[^"]|"")*")|([\p{L}_\\][\p{L}\p{N}_.\\]*)\[/gu;
  let [out, from] = ["", 0];
  for (let match = start.exec(formula); match !== null; match = start.exec(formula)) {
    if (match[2] === undefined) continue;
    const table = tables.find((t) => t.name.toLowerCase() === match[2]!.toLowerCase());
    const open = match.index + match[2].length;
    const close = closing(formula, open);
    if (table === undefined || close < 0) continue;
    out += formula.slice(from, match.index) + areaText(table, formula.slice(open + 1, close), where);
    from = close + 1;
    start.lastIndex = from;
  }
  return out + formula.slice(from);
}

const escaped = (column: string): string => column.replace(/['[\]#]/g, "'$&");

/**
 * The other way: a formula inside a table names the cells of its own row, and the headings, by their columns. So the
 * formulas of a column are one and the same, and Excel fills it into a new row.
 */
export function withTables(formula: string, table: BookTable, { row }: Where): string {
  const named = (column: number, at: number): string | undefined => {
    const name = table.columns[column - table.area.left];
    const part = at === row ? "#This Row" : table.headers && at === table.area.top ? "#Headers" : undefined;
    return name === undefined || part === undefined ? undefined : `${table.name}[[${part}],[${escaped(name)}]]`;
  };
  const cell = /(?<![\w.!'$:])\$?([A-Z]{1,3})\$?([1-9]\d*)(?![\w.(:!])/g;
  return formula
    .split(/("(?:[^"]|"")*")/)
    .map((part, i) =>
      i % 2 === 1
        ? part
        : part.replace(cell, (all, letters: string, at: string) => named(columnOf(letters), Number(at) - 1) ?? all),
    )
    .join("");
}
