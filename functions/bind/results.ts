import { InputError } from "../../src/errors";
import type { Text } from "../../src/phrase";
import { quantities, type Units } from "../../src/quantities";
import { CellError, type Cell } from "../kinds/cell";
import type { Out, Result } from "./entry";
import { refusalCell, type Read } from "../kinds/refusal";
import { printText } from "../kinds/sentence";
import { words } from "../kinds/words";

type Line = Readonly<Record<string, unknown>>;
type Rows = Extract<Result, { readonly columns: unknown }>;

const notFinite = new CellError("#NUM!", "the result is not a number that a cell can hold");

const toCell = (value: unknown, as: Out, units: Units): Cell => {
  if (value === undefined) return "";
  if (typeof value === "number" && as !== "text") {
    const printed = value / quantities[as][units].factor;
    return Number.isFinite(printed) ? printed : notFinite;
  }
  return value instanceof InputError ? refusalCell(value, units) : printText(value as Text, units);
};

/** A result that is read and printed, not calculated with: a few significant digits, large numbers whole. */
const rounded = (x: number, digits: number): number =>
  Math.abs(x) >= 10_000 ? Math.round(x) : Number(x.toPrecision(digits));

export type Printer = (value: unknown) => Cell;

/** Turns what a function gives into the cells shown, a printer for each; made once per call. */
export function printers(result: Result, shown: readonly string[], units: Units): readonly Printer[] {
  if (result.form === "cell") {
    const { as, of } = result;
    // A finite number is nearly every answer: its factor is looked up once.
    const factor = as === "text" ? NaN : quantities[as][units].factor;
    return [
      (value) => {
        const own = of === undefined ? value : (value as Line)[of];
        const number = typeof own === "number" ? own / factor : NaN;
        return Number.isFinite(number) ? number : toCell(own, as, units);
      },
    ];
  }
  return shown.map((name) => {
    const { as } = result.columns[name]!;
    return (value) => toCell((value as Line)[name], as, units);
  });
}

/** One item as a card: label, value, unit, note below each other. */
export function cardCells({ columns }: Rows, read: Read, units: Units): Cell[][] {
  if ("refusal" in read) return [[refusalCell(read.refusal, units)]];
  return Object.entries(columns).map(([name, { as, help, digits }]) => {
    const cell = toCell((read.value as Line)[name], as, units);
    const unit = as === "text" ? "" : quantities[as][units].unit;
    return cell instanceof CellError
      ? [words(name), "-", "", cell.text]
      : [words(name), typeof cell === "number" ? rounded(cell, digits) : cell, unit, help];
  });
}

/** A table with its heading row, where it has one. */
export function tableCells(result: Rows, read: Read, units: Units): Cell[][] {
  if ("refusal" in read) return [[refusalCell(read.refusal, units)]];
  const { columns } = result;
  const names = Object.keys(columns);
  return [
    ...("headless" in result ? [] : [names.map(words)]),
    ...(read.value as readonly Line[]).map((line) => names.map((name) => toCell(line[name], columns[name]!.as, units))),
  ];
}
