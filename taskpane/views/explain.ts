import { catalogue } from "../../functions/catalogue";
import { isError } from "../../functions/formula/cellErrors";
import { CellError, type Cell } from "../../functions/kinds/cell";
import { callsIn, type Call } from "../sheet/callsIn";
import type { Sheet, Value } from "../sheet/sheet";
import { callAgain } from "./callAgain";

/** A cell in error: its formula, what it shows, its sheet, and where it lies from the formula's own cell. */
export interface Asked {
  readonly formula: string;
  readonly value: Value;
  readonly sheet: string;
  readonly offset?: readonly [rows: number, columns: number];
}

/** What Excel says of its own accord, whatever the function would answer. */
const excelsOwn: ReadonlyMap<string, string> = new Map([
  [
    "#NAME?",
    "Excel did not know a function or a name in it when it calculated this cell. Once the add-in is there, enter the cell again (F2, Enter).",
  ],
  [
    "#SPILL!",
    "its results do not fit: there is something in the cells that they need. Clear those cells, or move the formula.",
  ],
  ["#BUSY!", "Excel still waits for the result. If it stays so, calculate everything again (Ctrl+Alt+F9)."],
  ["#GETTING_DATA", "Excel still waits for the result. If it stays so, calculate everything again (Ctrl+Alt+F9)."],
]);

/**
 * The refusal in one call of the formula; of a part of it, which part it is. Another error than the cell shows explains
 * nothing; but older Excel shows #VALUE! for any.
 */
function refusal(
  cells: Cell[][],
  { name, whole }: Call,
  value: string,
  [row, column]: readonly [number, number],
): string {
  const cell = whole ? cells[row]?.[column] : cells.flat().find((c) => c instanceof CellError);
  if (!(cell instanceof CellError) || (whole && cell.code !== value && value !== "#VALUE!")) return "";
  return (
    (whole ? "" : `SAW.${name} in it: `) +
    (cell.text === "" ? `${cell.code} comes from a cell that it reads.` : cell.text)
  );
}

/** What is to be said without asking the functions again. */
function atOnce(formula: string, value: string, calls: readonly Call[]): string | undefined {
  const unknown = calls.find((c) => !catalogue.some((e) => e.name === c.name));
  if (unknown !== undefined) return `this version of Kerfsheet has no function ${unknown.name}.`;
  return formula.includes("#REF!")
    ? "a cell that it read has been deleted: #REF! stands in its place. Point it at the right cell."
    : excelsOwn.get(value);
}

/**
 * Why a cell holds an error. Excel does not show the sentence everywhere, so the function is called again here with the
 * same cells. Empty for anything that is not an error of a formula with one of our functions.
 */
export async function explain({ formula, value, sheet: on, offset = [0, 0] }: Asked, sheet: Sheet): Promise<string> {
  const calls = callsIn(formula);
  if (!isError(value) || calls.length === 0) return "";
  const said = atOnce(formula, value, calls);
  if (said !== undefined) return said;
  let unread = false;
  for (const one of calls) {
    const cells = await callAgain(one, on, sheet).catch(() => undefined);
    const why = cells === undefined ? "" : refusal(cells, one, value, offset);
    if (why !== "") return why;
    unread ||= cells === undefined;
  }
  if (unread)
    return "an argument is a formula of its own, or something else that is not read here (a whole column, a table, another workbook). Put it into a cell to see the reason.";
  return calls[calls.length - 1]!.whole
    ? "asked again, the function gives something else: the cell is out of date. Enter it again, or calculate everything again (Ctrl+Alt+F9)."
    : "the functions in it give answers; the error comes from the rest of the formula.";
}
