import type { IRange } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type { FormulaDataModel } from "@univerjs/engine-formula";

type Areas = ReadonlyMap<string, { readonly rows: number; readonly columns: number }>;

/** How far each formula of the open book fills, by sheet and cell. */
function areasOf(api: FUniver, formulas: FormulaDataModel): Areas {
  const sheets = formulas.getArrayFormulaRange()[api.getActiveWorkbook()?.getId() ?? ""] ?? {};
  return new Map(
    Object.entries(sheets).flatMap(([sheet, lines]) =>
      Object.entries(lines ?? {}).flatMap(([row, cells]) =>
        Object.entries(cells as Readonly<Record<string, IRange>>).map(
          ([column, { startRow, endRow, startColumn, endColumn }]) => [
            `${sheet} ${row} ${column}`,
            { rows: endRow - startRow, columns: endColumn - startColumn },
          ],
        ),
      ),
    ),
  );
}

const isSmaller = (before: Areas, now: Areas): boolean =>
  [...before].some(([at, { rows, columns }]) => {
    const area = now.get(at);
    return area === undefined || area.rows < rows || area.columns < columns;
  });

/**
 * In the calculation in which a formula comes to fill fewer cells, the engine still lets other formulas see what stood in
 * the cells it gave up: a count of them would be wrong. So all is calculated once more then. Gives whether that is done.
 */
export function settleSpills(api: FUniver, formulas: FormulaDataModel): () => boolean {
  let [book, before, settled]: [string, Areas, boolean] = ["", new Map(), true];
  api.getFormula().calculationResultApplied(() => {
    const [open, now] = [api.getActiveWorkbook()?.getId() ?? "", areasOf(api, formulas)];
    settled = open !== book || !isSmaller(before, now);
    [book, before] = [open, now];
    if (!settled) api.getFormula().executeCalculation();
  });
  return () => settled;
}
