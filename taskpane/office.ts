import { a1, absolute, freeName } from "./address";
import { refusals } from "./refusals";
import type { Content, Order, Outcome, Selection, Sheet, Value } from "./sheet";
import type { Link } from "./store";

/** The one file that talks to Excel. It reads the selection and writes when told to; nothing else. */

const above = 60;
const across = 40;
const lastRow = 1_048_576;
const lastColumn = 16_384;

/** As typed: the apostrophe keeps text as text, whatever it begins with and whatever it looks like. */
export const typed = (content: Content): string | number => {
  if (typeof content === "number") return content;
  if ("formula" in content) return content.formula;
  return content.text === "" ? "" : `'${content.text}`;
};

const reasons: ReadonlyMap<string, (sheet: string) => string> = new Map([
  ["AccessDenied", refusals.protected],
  ["ItemNotFound", refusals.gone],
  ["InvalidOperationInCellEditMode", () => refusals.editing],
  ["InvalidSelection", () => refusals.noCell],
]);

/** Excel's error as a sentence. */
const why = (problem: unknown, sheet: string): string => {
  const code = (problem as { readonly code?: string }).code ?? "unknown error";
  return reasons.get(code)?.(sheet) ?? refusals.unknown(code);
};

async function selected(): Promise<Selection> {
  try {
    return await Excel.run(async (context) => {
      const all = context.workbook.getSelectedRanges();
      const first = all.areas.getItemAt(0);
      const used = first.worksheet.getUsedRangeOrNullObject(true);
      all.load({ areaCount: true });
      first.load({ rowIndex: true, columnIndex: true, rowCount: true, columnCount: true, worksheet: { name: true } });
      used.load({ columnIndex: true, columnCount: true });
      await context.sync();
      const top = Math.max(0, first.rowIndex - above);
      const wide = used.isNullObject ? 1 : Math.min(across, used.columnIndex + used.columnCount);
      const around = first.worksheet.getRangeByIndexes(top, 0, first.rowIndex - top + 1, Math.max(wide, 1));
      const cell = first.getCell(0, 0);
      around.load({ values: true });
      cell.load({ values: true, formulas: true });
      await context.sync();
      const { rowIndex: row, columnIndex: column, rowCount: rows, columnCount: columns } = first;
      const formula = String((cell.formulas as Value[][])[0]![0]);
      return { formula: formula.startsWith("=") ? formula : "", sheet: first.worksheet.name, row, column, rows, columns, areas: all.areaCount, value: (cell.values as Value[][])[0]![0]!, around: { top, values: around.values as Value[][] } };
    });
  } catch (problem) {
    throw new Error(why(problem, ""));
  }
}

/** A range by its address, with its sheet where it names one, or a defined name. */
function rangeBy(context: Excel.RequestContext, reference: string): Excel.Range {
  const [, quoted, plain, address] = /^(?:(?:'((?:[^']|'')+)'|([^'!]+))!)?(.+)$/.exec(reference)!;
  const sheet = quoted?.replace(/''/g, "'") ?? plain;
  if (sheet !== undefined) return context.workbook.worksheets.getItem(sheet).getRange(address);
  return /^\$?[A-Z]{1,3}\$?\d/i.test(reference) ? context.workbook.worksheets.getActiveWorksheet().getRange(reference) : context.workbook.names.getItem(reference).getRange();
}

const read: Sheet["read"] = (references) =>
  Excel.run(async (context) => {
    const ranges = references.map((reference) => rangeBy(context, reference));
    for (const range of ranges) range.load({ values: true });
    await context.sync();
    return ranges.map((range) => range.values as Value[][]);
  });

async function onSelect(tell: () => void): Promise<void> {
  await Excel.run(async (context) => {
    context.workbook.onSelectionChanged.add(() => {
      tell();
      return Promise.resolve();
    });
    await context.sync();
  });
}

/** What the last order wrote over, to put it back. */
interface Before {
  readonly order: Order;
  readonly formulas: unknown[][];
  readonly formats: unknown[][];
  readonly name: string | undefined;
}

const size = ({ cells }: Order): readonly [rows: number, columns: number] => [cells.length, cells[0]!.length];

const rangeOf = (sheet: Excel.Worksheet, order: Order): Excel.Range => sheet.getRangeByIndexes(order.at.row, order.at.column, ...size(order));

const firstTaken = (formulas: readonly (readonly unknown[])[], order: Order): Outcome | undefined => {
  for (const [r, cells] of formulas.entries()) {
    const c = cells.findIndex((f) => f !== "");
    if (c >= 0) return { did: "occupied", address: a1(order.at.row + r, order.at.column + c), holds: String(cells[c]).slice(0, 60) };
  }
  return undefined;
};

/** As it must be typed to be the same again: a text is its own formula, and would otherwise be read anew, 3/4 as a date. */
const retyped = (formulas: readonly (readonly unknown[])[], values: readonly (readonly unknown[])[]): unknown[][] => formulas.map((row, r) => row.map((f, c) => (typeof f === "string" && f !== "" && f === values[r]![c] ? `'${f}` : f)));

const isOutside = (order: Order): boolean => order.at.row + size(order)[0] > lastRow || order.at.column + size(order)[1] > lastColumn;

/** Reads what is there, and what could stand in the way, in one go; then writes in one go, so that one undo takes it back. */
async function place(context: Excel.RequestContext, order: Order): Promise<{ readonly outcome: Outcome; readonly before?: Before }> {
  const sheet = context.workbook.worksheets.getItem(order.at.sheet);
  const range = rangeOf(sheet, order);
  sheet.protection.load({ protected: true });
  range.load({ formulas: true, values: true, numberFormat: true, format: { protection: { locked: true } } });
  const { names } = context.workbook;
  if (order.name !== undefined) names.load({ name: true });
  await context.sync();
  if (sheet.protection.protected && range.format.protection.locked) return { outcome: { did: "refused", why: refusals.protected(order.at.sheet) } };
  const taken = order.overwrite ? undefined : firstTaken(range.formulas, order);
  if (taken !== undefined) return { outcome: taken };
  const before = { order, formulas: retyped(range.formulas as unknown[][], range.values as unknown[][]), formats: range.numberFormat as unknown[][] };
  range.formulas = order.cells.map((row) => row.map(typed));
  const name = order.name === undefined ? undefined : freeName(order.name, names.items.map((n) => n.name));
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

/** The sheet of the Excel that holds this pane. */
export function excelSheet(): Sheet {
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
  return { selected, onSelect, read, write, undo };
}

/** Says how things stand with Excel, now and when that changes. */
export function officeLink(tell: (link: Link) => void): void {
  if (typeof Office === "undefined") {
    const wanted = document.querySelector('script[src$="/office.js"]') !== null;
    tell({ is: "none", why: wanted ? "Excel's own script (office.js) did not load, so nothing can be inserted; looking things up works. Open the pane again when the network allows it." : "There is no sheet beside this page, so nothing can be inserted; looking things up works." });
    return;
  }
  tell({ is: "waiting", why: "Waiting for Excel; looking things up works already." });
  void Office.onReady(({ host }) => {
    tell(host === Office.HostType.Excel ? { is: "ready", sheet: excelSheet() } : { is: "none", why: "This page is open outside Excel, so nothing can be inserted; looking things up works. In Excel, open it with the Kerfsheet button." });
  });
}
