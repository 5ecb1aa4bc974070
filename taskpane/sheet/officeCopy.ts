import { valuesName } from "./address";
import { why } from "./officeRun";
import { refusals } from "./refusals";
import type { Copied } from "./sheet";

/** A sheet as values in a new one, to be sent. */

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
export async function copyValues(sheet: string): Promise<Copied> {
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
