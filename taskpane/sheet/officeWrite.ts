import { addressOf } from "../../functions/formula/cellAddress";
import { absolute, freeName } from "./address";
import { why } from "./officeRun";
import { refusals } from "./refusals";
import type { Content, Order, Outcome, Sheet, Stuck } from "./sheet";

/** What the pane writes into Excel, and how the last order is taken back. */

const lastRow = 1_048_576;
const lastColumn = 16_384;

/** As typed: the apostrophe keeps text as text, whatever it begins with and whatever it looks like. */
export const typed = (content: Content): string | number => {
  if (typeof content === "number") return content;
  if ("formula" in content) return content.formula;
  return content.text === "" ? "" : `'${content.text}`;
};

/** What the last order wrote over, to put it back. */
interface Before {
  readonly order: Order;
  readonly formulas: unknown[][];
  readonly formats: unknown[][];
  readonly name: string | undefined;
}

const size = ({ cells }: Order): readonly [rows: number, columns: number] => [cells.length, cells[0]!.length];

const rangeOf = (sheet: Excel.Worksheet, order: Order): Excel.Range =>
  sheet.getRangeByIndexes(order.at.row, order.at.column, ...size(order));

const firstTaken = (formulas: readonly (readonly unknown[])[], order: Order): Outcome | undefined => {
  for (const [r, cells] of formulas.entries()) {
    const c = cells.findIndex((f) => f !== "");
    if (c >= 0)
      return {
        did: "occupied",
        address: addressOf(order.at.row + r, order.at.column + c),
        holds: String(cells[c]).slice(0, 60),
      };
  }
  return undefined;
};

/** As it must be typed to be the same again: a text is its own formula, and would otherwise be read anew, 3/4 as a date. */
const retyped = (formulas: readonly (readonly unknown[])[], values: readonly (readonly unknown[])[]): unknown[][] =>
  formulas.map((row, r) => row.map((f, c) => (typeof f === "string" && f !== "" && f === values[r]![c] ? `'${f}` : f)));

const isOutside = (order: Order): boolean =>
  order.at.row + size(order)[0] > lastRow || order.at.column + size(order)[1] > lastColumn;

/** Reads what is there, and what could stand in the way, in one go; then writes in one go, so that one undo takes it back. */
async function place(
  context: Excel.RequestContext,
  order: Order,
): Promise<{ readonly outcome: Outcome; readonly before?: Before }> {
  const sheet = context.workbook.worksheets.getItem(order.at.sheet);
  const range = rangeOf(sheet, order);
  sheet.protection.load({ protected: true });
  range.load({ formulas: true, values: true, numberFormat: true, format: { protection: { locked: true } } });
  const { names } = context.workbook;
  if (order.name !== undefined) names.load({ name: true });
  await context.sync();
  if (sheet.protection.protected && range.format.protection.locked)
    return { outcome: { did: "refused", why: refusals.protected(order.at.sheet) } };
  const taken = order.overwrite ? undefined : firstTaken(range.formulas, order);
  if (taken !== undefined) return { outcome: taken };
  const before = {
    order,
    formulas: retyped(range.formulas as unknown[][], range.values as unknown[][]),
    formats: range.numberFormat as unknown[][],
  };
  range.formulas = order.cells.map((row) => row.map(typed));
  const name =
    order.name === undefined
      ? undefined
      : freeName(
          order.name,
          names.items.map((n) => n.name),
        );
  if (name !== undefined) names.add(name, `=${absolute(order.at, ...size(order))}`);
  await context.sync();
  return { outcome: { did: "written", ...(name === undefined ? {} : { name }) }, before: { ...before, name } };
}

async function putBack(context: Excel.RequestContext, { order, formulas, formats, name }: Before): Promise<void> {
  const range = rangeOf(context.workbook.worksheets.getItem(order.at.sheet), order);
  range.numberFormat = formats;
  range.formulas = formulas;
  if (name !== undefined) context.workbook.names.getItemOrNullObject(name).delete();
  await context.sync();
}

/**
 * Types formulas again: Excel does not look for a function that was missing when a cell was calculated, not even when it
 * recalculates; assigning the formula does it. A protected sheet is left as it is.
 */
export async function reenter(name: string, cells: readonly Stuck[]): Promise<string> {
  try {
    return await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem(name);
      sheet.protection.load({ protected: true });
      await context.sync();
      if (sheet.protection.protected) return refusals.protected(name);
      for (const { row, column, formula } of cells) sheet.getRangeByIndexes(row, column, 1, 1).formulas = [[formula]];
      await context.sync();
      return "";
    });
  } catch (problem) {
    return why(problem, name);
  }
}

/** Writes orders, and remembers the last one. */
export function writer(): Pick<Sheet, "write" | "undo"> {
  let last: Before | undefined;
  const write = async (order: Order): Promise<Outcome> => {
    if (isOutside(order)) return { did: "refused", why: refusals.outside };
    try {
      const { outcome, before } = await Excel.run((context) => place(context, order));
      last = before ?? last;
      return outcome;
    } catch (problem) {
      return { did: "refused", why: why(problem, order.at.sheet) };
    }
  };
  const undo = async (): Promise<Outcome> => {
    const before = last;
    if (before === undefined) return { did: "refused", why: refusals.nothing };
    try {
      await Excel.run((context) => putBack(context, before));
      last = undefined;
      return { did: "written" };
    } catch (problem) {
      return { did: "refused", why: why(problem, before.order.at.sheet) };
    }
  };
  return { write, undo };
}
