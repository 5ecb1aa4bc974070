import { CellError, type Cell, type Range } from "../../functions/kinds/cell";
import { type Entry } from "../../functions/bind/entry";
import { isRequired, slots, type Slot } from "../../functions/bind/slots";
import { parseCall } from "../../functions/bind/parseCall";
import type { Units } from "../../src/quantities";
import { addressOf } from "../../functions/formula/cellAddress";
import { refusals } from "./refusals";
import { rowColumns } from "./rowColumns";
import type { Contents, Selection } from "./sheet";

/** Most formulas that one fill writes. */
export const mostRows = 5000;

/** Texts to fall back on where the row does not hold an argument: the pane's own size, grade, result. */
export type Literals = ReadonlyMap<string, string>;

const quoted = (text: string): string => `"${text.replace(/"/g, '""')}"`;

const cellText = (cell: Cell): string =>
  typeof cell === "string" ? quoted(cell) : cell === null || cell instanceof CellError ? '""' : String(cell);

const rangeText = (range: Range | null | undefined): string => {
  if (range === null || range === undefined) return "";
  return range.length === 1 && range[0]!.length === 1
    ? cellText(range[0]![0]!)
    : `{${range.map((r) => r.map(cellText).join(",")).join(";")}}`;
};

/** Arguments in the worksheet's order, blank ones at the end left away. */
const written = (name: string, args: readonly string[]): string => {
  let end = args.length;
  while (end > 0 && args[end - 1] === "") end -= 1;
  return `=SAW.${name}(${args.slice(0, end).join(",")})`;
};

const argument = (slot: Slot, literals: Literals, example: Range | null | undefined): string => {
  const text = literals.get(slot.name);
  return text === undefined ? rangeText(example) : quoted(text);
};

/** A pitch that may be left out is left out: the cell beside it is mostly an answer of our own, and answers in a chain are slow. */
const mayCome = (slot: Slot): boolean => slot.role === "param" && (isRequired(slot) || slot.name !== "pitch");

/** Makes the formula of one row: cells of that row where they hold an argument, else the literals, else the example's. */
export function rowFormula(
  entry: Entry,
  selection: Selection,
  literals: Literals,
  { units, shop }: { readonly units: Units; readonly shop: string | undefined },
): (row: number) => string {
  const columns = rowColumns(selection, units);
  const example = parseCall(entry.examples[0]).args;
  const all = slots(entry);
  return (row) =>
    written(
      entry.name,
      all.map((slot, i) => {
        if (slot.role === "settings" && shop !== undefined) return shop;
        if (slot.role === "units") return units === "metric" ? quoted("metric") : "";
        const column = mayCome(slot) ? columns.get(slot.name === "item" ? "section" : slot.name) : undefined;
        return column === undefined ? argument(slot, literals, example[i]) : addressOf(row, column);
      }),
    );
}

/** Why a formula cannot go down the selection; undefined where it can. */
export const fillTrouble = ({ areas, columns, rows }: Selection): string | undefined => {
  if (areas > 1) return refusals.areas;
  if (columns > 1)
    return "The selection is more than one column wide. Select one cell, or one column of cells to fill.";
  return rows > mostRows
    ? `${rows} rows are selected. Select at most ${mostRows}, or the cells that have an order line beside them.`
    : undefined;
};

/** The formula for every row of the selection. */
export function filled(selection: Selection, formula: (row: number) => string): Contents | string {
  return (
    fillTrouble(selection) ??
    Array.from({ length: selection.rows }, (_, i) => [{ formula: formula(selection.row + i) }])
  );
}
