import { isError } from "../../functions/formula/cellErrors";
import { isCells, splitReference } from "./address";
import { plainly } from "./officeRun";
import type { Block, Place, Selection, Sheet, Spill, Tab, Value } from "./sheet";

/** What the pane reads of Excel: the selection, ranges by their addresses, and sheets block by block. */

const above = 60;
const across = 40;

export const selected = (): Promise<Selection> =>
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

export const read: Sheet["read"] = (references) =>
  Excel.run(async (context) => {
    const ranges = references.map((reference) => rangeBy(context, reference));
    for (const range of ranges) range.load({ values: true });
    await context.sync();
    return ranges.map((range) => range.values as Value[][]);
  });

/**
 * Tells of every new selection while the pane shows, and once when it shows again. With the runtime that functions and pane
 * share, the page works on while the pane is closed; it sleeps then, so that nothing is read behind a closed pane.
 */
export async function onSelect(tell: () => void): Promise<void> {
  let hidden = false;
  await Excel.run(async (context) => {
    context.workbook.onSelectionChanged.add(() => {
      if (!hidden) tell();
      return Promise.resolve();
    });
    await context.sync();
  });
  if (!Office.context.requirements.isSetSupported("SharedRuntime", "1.1")) return;
  const follow = Office.addin.onVisibilityModeChanged(({ visibilityMode }) => {
    hidden = visibilityMode === Office.VisibilityMode.hidden;
    if (!hidden) tell();
  });
  // A host that does not tell costs the sleep and nothing else.
  await follow.catch(() => undefined);
}

export const sheets = (): Promise<readonly Tab[]> =>
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

export const block = (name: string, from: number): Promise<Block> =>
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

export const go = ({ sheet, row, column }: Place): Promise<void> =>
  plainly(sheet, async (context) => {
    const target = context.workbook.worksheets.getItem(sheet);
    target.activate();
    target.getRangeByIndexes(row, column, 1, 1).select();
    await context.sync();
  });
