import type { BookTable } from "./book";
import { absoluteOf, areaOf, inArea, type Area } from "../formula/cellAddress";
import { tableWords, rewritten, type Token } from "../formula/tokens";
import { BookFault } from "./fault";

/** References by table and column, as Excel keeps them in files: Lines[[#This Row],[size]]; the engine knows only addresses. */

/** A sheet's name as formulas write it. */
export const quotedSheet = (name: string): string => `'${name.replace(/'/g, "''")}'`;

/** The data rows of a table. */
export const tableData = (table: BookTable): string => `${quotedSheet(table.sheet)}!${absoluteOf(dataOf(table))}`;

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

/** What stands in the brackets of a table reference, as row words and first and last column. */
function partsOf(token: Token): { readonly specs: readonly string[]; readonly columns: readonly string[] } {
  const { here, words } = tableWords(token);
  const specs = words.filter((w) => w.startsWith("#"));
  return { specs: here ? ["#this row", ...specs] : specs, columns: words.filter((w) => !w.startsWith("#")) };
}

function areaText(table: BookTable, token: Token, { sheet, row }: Where): string {
  const { specs, columns } = partsOf(token);
  const at = columns.map((c) => table.columns.findIndex((known) => plainName(known) === plainName(c)));
  if (at.includes(-1)) throw new BookFault(`names a column that table ${table.name} does not have: ${token.text}`);
  const [top, bottom] = rowsOf(table, specs, row);
  if (top < 0) throw new BookFault(`names a part that tables do not have: ${token.text}`);
  const [first = 0, last = at.length === 0 ? table.columns.length - 1 : first] = at;
  return `${table.sheet === sheet ? "" : `${quotedSheet(table.sheet)}!`}${absoluteOf({ top, bottom, left: table.area.left + first, right: table.area.left + last })}`;
}

/** Where a formula stands: its sheet, and its row from 0. */
export interface Where {
  readonly sheet: string;
  readonly row: number;
}

/** Writes the table references of a formula as addresses. */
export function withoutTables(formula: string, tables: readonly BookTable[], where: Where): string {
  if (!formula.includes("[")) return formula;
  return rewritten(formula, (token, i, all) => {
    if (token.kind !== "table" || all[i - 1]?.kind === "sheet") return token.text;
    const name = token.text.slice(0, token.text.indexOf("[")).toLowerCase();
    const table = tables.find((t) => t.name.toLowerCase() === name);
    return table === undefined ? token.text : areaText(table, token, where);
  });
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
  return rewritten(formula, ({ kind, text }, i, all) => {
    const cell = kind === "reference" ? areaOf(text) : undefined;
    const isPart = all[i - 1]?.kind === "sheet" || all[i - 1]?.text === ":" || all[i + 1]?.text === ":";
    return cell === undefined || text.includes(":") || isPart ? text : (named(cell.left, cell.top) ?? text);
  });
}

/** Outside a table: a whole column of its data by its name, so that the formula counts what is added to the table. */
export const withColumns = (formula: string, tables: readonly BookTable[]): string =>
  rewritten(formula, ({ kind, text }, i, all) => {
    const area = kind === "reference" && all[i - 1]?.kind !== "sheet" ? areaOf(text) : undefined;
    const table =
      area?.left === area?.right
        ? tables.find((t) => {
            const data = dataOf(t);
            return area?.top === data.top && area.bottom === data.bottom && inArea(data, area.top, area.left);
          })
        : undefined;
    return table === undefined ? text : `${table.name}[${escaped(table.columns[area!.left - table.area.left]!)}]`;
  });
