import { addressOf } from "../../functions/formula/cellAddress";
import { absolute, freeName, isCells, splitReference, valuesName } from "./address";
import { isError } from "../../functions/formula/cellErrors";
import { refusals } from "./refusals";
import type { Block, Content, Copied, Order, Outcome, Place, Selection, Sheet, Spill, Tab, Value } from "./sheet";
import type { Link } from "./store";

/** The one file that talks to Excel. It reads what it is asked for and writes when told to; nothing else. */

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
  ["ItemAlreadyExists", () => refusals.clash],
]);

/** Excel's error as a sentence. */
const why = (problem: unknown, sheet: string): string => {
  const code = (problem as { readonly code?: string }).code ?? "unknown error";
  return reasons.get(code)?.(sheet) ?? refusals.unknown(code);
};

/** Runs it; what goes wrong becomes a plain sentence. */
const plainly = async <T>(sheet: string, batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> => {
  try {
    return await Excel.run(batch);
  } catch (problem) {
    throw new Error(why(problem, sheet));
  }
};

const selected = (): Promise<Selection> =>
  plainly("", async (context) => {
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
    return {
      formula: formula.startsWith("=") ? formula : "",
      sheet: first.worksheet.name,
      row,
      column,
      rows,
      columns,
      areas: all.areaCount,
      value: (cell.values as Value[][])[0]![0]!,
      around: { top, values: around.values as Value[][] },
    };
  });

/** A range by its address, with its sheet where it names one, or a defined name. */
function rangeBy(context: Excel.RequestContext, reference: string): Excel.Range {
  const { sheet, rest } = splitReference(reference);
  const { worksheets, names } = context.workbook;
  if (sheet !== undefined) return worksheets.getItem(sheet).getRange(rest);
  return isCells(rest) ? worksheets.getActiveWorksheet().getRange(rest) : names.getItem(rest).getRange();
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

const sheets = (): Promise<readonly Tab[]> =>
  plainly("", async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load({ name: true, visibility: true });
    await context.sync();
    return worksheets.items.map(({ name, visibility }) => ({ name, hidden: visibility !== "Visible" }));
  });

/** Cells of one block: their formulas and values stay far below the 5 MB that Excel on the web sends at once. */
const mostInBlock = 20_000;
const mostAsked = 500;
/** Of cells in error: the formula that spills into them, where there is one. Cells of other formulas are not asked. */
async function spillsIn(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { row: top, column: left, values, formulas }: Omit<Block, "spills">,
): Promise<readonly Spill[]> {
  const wrong = values.flatMap((line, r) =>
    line.flatMap((v, c) =>
      isError(v) && /^#|SAW/i.test(String(formulas[r]![c])) ? [{ row: top + r, column: left + c }] : [],
    ),
  );
  const spills: Spill[] = [];
  for (let i = 0; i < wrong.length; i += mostAsked) {
    const asked = wrong
      .slice(i, i + mostAsked)
      .map((at) => ({ at, parent: sheet.getRangeByIndexes(at.row, at.column, 1, 1).getSpillParentOrNullObject() }));
    for (const { parent } of asked) parent.load({ rowIndex: true, columnIndex: true, formulas: true });
    await context.sync();
    for (const { at, parent } of asked)
      if (!parent.isNullObject)
        spills.push({
          ...at,
          offset: [at.row - parent.rowIndex, at.column - parent.columnIndex],
          formula: String((parent.formulas as Value[][])[0]![0]),
        });
  }
  return spills;
}

const block = (name: string, from: number): Promise<Block> =>
  plainly(name, async (context) => {
    const sheet = context.workbook.worksheets.getItem(name);
    const used = sheet.getUsedRangeOrNullObject(true);
    used.load({ rowIndex: true, columnIndex: true, rowCount: true, columnCount: true });
    await context.sync();
    if (used.isNullObject || from >= used.rowIndex + used.rowCount)
      return { row: from, column: 0, formulas: [], values: [], spills: [], next: undefined };
    const row = Math.max(from, used.rowIndex);
    const end = Math.min(used.rowIndex + used.rowCount, row + Math.max(1, Math.floor(mostInBlock / used.columnCount)));
    const range = sheet.getRangeByIndexes(row, used.columnIndex, end - row, used.columnCount);
    range.load({ formulas: true, values: true });
    await context.sync();
    const read = {
      row,
      column: used.columnIndex,
      formulas: range.formulas as Value[][],
      values: range.values as Value[][],
      next: end < used.rowIndex + used.rowCount ? end : undefined,
    };
    return { ...read, spills: await spillsIn(context, sheet, read) };
  });

const go = ({ sheet, row, column }: Place): Promise<void> =>
  plainly(sheet, async (context) => {
    const target = context.workbook.worksheets.getItem(sheet);
    target.activate();
    target.getRangeByIndexes(row, column, 1, 1).select();
    await context.sync();
  });

/** Throws a sentence of ours through Excel.run. */
class Refused extends Error {}

/** The cells of a sheet that show, the widths of its columns that show, and a free name for the copy. */
async function readForCopy(context: Excel.RequestContext, name: string) {
  const { worksheets, protection } = context.workbook;
  const used = worksheets.getItem(name).getUsedRangeOrNullObject();
  protection.load({ protected: true });
  worksheets.load({ name: true });
  used.load({ rowIndex: true, columnIndex: true, cellCount: true });
  await context.sync();
  if (protection.protected) throw new Refused(refusals.structure);
  if (used.isNullObject) throw new Refused(refusals.empty);
  const columns = used.getColumnProperties({ columnHidden: true, format: { columnWidth: true } });
  // Asked of a single cell, Excel answers for the whole sheet.
  const shown = used.cellCount === 1 ? used : used.getSpecialCellsOrNullObject("Visible");
  shown.load(["cellCount"]);
  await context.sync();
  if (shown.isNullObject) throw new Refused(refusals.empty);
  const widths = columns.value.flatMap((c) => (c.columnHidden === true ? [] : [c.format!.columnWidth!]));
  return {
    shown,
    row: used.rowIndex,
    column: used.columnIndex,
    widths,
    unseen: used.cellCount - shown.cellCount,
    name: valuesName(
      name,
      worksheets.items.map((w) => w.name),
    ),
  };
}

/** Fills the new sheet, and looks whether a formula came along. */
async function fillCopy(
  context: Excel.RequestContext,
  made: Excel.Worksheet,
  from: Awaited<ReturnType<typeof readForCopy>>,
): Promise<number> {
  const corner = made.getRangeByIndexes(from.row, from.column, 1, 1);
  corner.copyFrom(from.shown, "Formats");
  corner.copyFrom(from.shown, "Values");
  from.widths.forEach((width, i) => {
    made.getRangeByIndexes(0, from.column + i, 1, 1).format.columnWidth = width;
  });
  const all = made.getRange();
  all.conditionalFormats.clearAll();
  const formulas = all.getSpecialCellsOrNullObject("Formulas");
  const errors = all.getSpecialCellsOrNullObject("Constants", "Errors");
  for (const found of [formulas, errors]) found.load({ cellCount: true });
  await context.sync();
  if (!formulas.isNullObject) throw new Refused(refusals.stillFormula);
  return errors.isNullObject ? 0 : errors.cellCount;
}

/**
 * A new, empty sheet takes values and formats. Worksheet.copy() would be one call, but brings formulas, comments, links,
 * pictures, names, rules and hidden rows along, to be hunted down afterwards; here only what is asked for is there. No call
 * on the sheet that is copied writes, and what shows is what is sent: hidden rows and columns stay out.
 */
async function copyValues(sheet: string): Promise<Copied> {
  if (!Office.context.requirements.isSetSupported("ExcelApi", "1.12")) return { did: "refused", why: refusals.older };
  let made: string | undefined;
  try {
    return await Excel.run(async (context) => {
      const from = await readForCopy(context, sheet);
      const copy = context.workbook.worksheets.add(from.name);
      await context.sync();
      made = from.name;
      return { did: "copied", name: made, unseen: from.unseen, errors: await fillCopy(context, copy, from) };
    });
  } catch (problem) {
    const said = problem instanceof Refused ? problem.message : why(problem, sheet);
    const gone = made === undefined || (await removed(made));
    return { did: "refused", why: gone ? refusals.notCopied(sheet, said) : refusals.leftover(made!) };
  }
}

/** Takes away the sheet that was made just before; whether that went well. */
const removed = (made: string): Promise<boolean> =>
  Excel.run(async (context) => {
    context.workbook.worksheets.getItemOrNullObject(made).delete();
    await context.sync();
    return true;
  }).catch(() => false);

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
  return { selected, onSelect, read, write, undo, sheets, block, go, copyValues };
}

/** Says how things stand with Excel, now and when that changes. */
export function officeLink(tell: (link: Link) => void): void {
  if (typeof Office === "undefined") {
    const wanted = document.querySelector('script[src$="/office.js"]') !== null;
    tell({
      is: "none",
      why: wanted
        ? "Excel's own script (office.js) did not load, so nothing can be inserted; looking things up works. Open the pane again when the network allows it."
        : "There is no sheet beside this page, so nothing can be inserted; looking things up works.",
    });
    return;
  }
  tell({ is: "waiting", why: "Waiting for Excel; looking things up works already." });
  void Office.onReady(({ host }) => {
    tell(
      host === Office.HostType.Excel
        ? { is: "ready", sheet: excelSheet() }
        : {
            is: "none",
            why: "This page is open outside Excel, so nothing can be inserted; looking things up works. In Excel, open it with the Kerfsheet button.",
          },
    );
  });
}
