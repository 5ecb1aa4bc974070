import { InputError } from "../../src/errors";
import { quantities, type Quantity, type Units } from "../../src/quantities";
import type { Step } from "../../src/steps";
import { CellError, type Cell, type Range } from "../kinds/cell";
import type { Kept } from "../kinds/kind";
import { isRefusal, refusalCell } from "../kinds/refusal";
import { printText } from "../kinds/sentence";
import { call, unitsOfCall } from "./call";
import { column, type Entry, type Result } from "./entry";

/** The core's units, where they are not those that the metric sheet shows. */
const coreUnits: Partial<Record<Quantity, string>> = {
  area: "mm²",
  areaRate: "mm²/min",
  bandSpeed: "mm/min",
  chip: "mm",
  power: "W",
  stress: "N/mm²",
  density: "kg/mm³",
};
const unitOf = (unit: Step["unit"]): string =>
  unit === "text" ? "" : (coreUnits[unit] ?? quantities[unit].metric.unit);

const heads = ["step", "symbol", "formula", "value", "unit", "source"];
const result: Result = {
  form: "table",
  columns: Object.fromEntries(heads.map((head) => [head, column("text", "")])),
};

/** A value as a cell: a refusal is its sentence, never an error that would hide the other rows. */
function valueCell(value: Step["value"], units: Units): Cell {
  if (typeof value === "number") return Number.isFinite(value) ? value : String(value);
  return isRefusal(value) ? refusalCell(value, units).text : printText(value, units);
}

/** The answer once more in the caller's units, where those are not the core's. */
function inUnits({ name, symbol, value, unit }: Step, units: Units): Cell[][] {
  if (unit === "text" || typeof value !== "number") return [];
  const { factor, unit: shown } = quantities[unit][units];
  return shown === unitOf(unit) ? [] : [[name, symbol, "", value / factor, shown, "the same, in your units"]];
}

/** Rows of a working: the steps, and at the end the answer in the caller's units; or the one row of a refusal. */
function rowsOf(steps: readonly Step[] | CellError, units: Units): Cell[][] {
  if (steps instanceof CellError) return [["refused", "", "", steps.text, "", ""]];
  return [
    ...steps.map((s): Cell[] => [s.name, s.symbol, s.formula, valueCell(s.value, units), unitOf(s.unit), s.source]),
    ...inUnits(steps[steps.length - 1]!, units),
  ];
}

/** The steps of one call: the function is called with its own arguments, and its steps are kept instead of its answer. */
function stepsOf(entry: Entry, args: readonly (Range | null)[], memo: Kept): readonly Step[] | CellError {
  const working = entry.working!;
  let steps: readonly Step[] = [];
  const answered = call(
    {
      ...entry,
      result,
      run: (input: never) => {
        steps = working.steps(input);
        return [];
      },
    },
    args,
    memo,
  );
  const [[first]] = answered as [[Cell]];
  return first instanceof CellError ? first : steps;
}

const isPassed = (cell: unknown): cell is CellError => cell instanceof CellError && cell.text === "";

/** The function that is named, read as every argument is; the cell of a refusal where there is none of that name. */
function named(self: Entry, worked: readonly Entry[], range: Range | null, memo: Kept): Entry | Cell[][] {
  let found: Entry | undefined;
  const answered = call(
    {
      ...self,
      answer: undefined,
      run: ({ function: typed }: { readonly function: string }) => {
        const name = typed.replace(/^=?(SAW\.)?/i, "").toUpperCase();
        found = worked.find((e) => e.name === name);
        if (found !== undefined) return [];
        throw new InputError("invalid", "function", '{parameter} must be one of {names}; it is "{typed}"', {
          names: worked.map((e) => e.name).join(", "),
          typed: typed.slice(0, longestEcho),
        });
      },
    },
    [range],
    memo,
  );
  return found ?? answered;
}
const longestEcho = 40;

/**
 * The working of a call of any function that has one, as a table. The functions are given to it: an entry that imported the
 * catalogue would be a circle. `self` is the entry that is asked.
 */
export const answerWorking =
  (self: () => Entry, worked: readonly Entry[]) =>
  ([first = null, ...args]: readonly (Range | null)[], memo: Kept): Cell[][] => {
    const entry = named(self(), worked, first, memo);
    if (Array.isArray(entry)) return entry;
    const steps = stepsOf(entry, args, memo);
    return isPassed(steps) ? [[steps]] : [heads, ...rowsOf(steps, unitsOfCall(entry, args, memo))];
  };
