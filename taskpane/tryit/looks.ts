import { InterceptorEffectEnum, type ICellData, type Nullable, type Univer } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { INTERCEPTOR_POINT, InterceptCellContentPriority, SheetInterceptorService } from "@univerjs/sheets";

/** How the grid shows what is calculated: few digits, and columns wide enough for them. Values stay whole. */

const digits = 4;

/** A calculated number without a format of its own: at most four digits after its first, and whole numbers whole. */
export const short = (value: number): number =>
  Math.abs(value) >= 10 ** (digits - 1) ? Math.round(value) : Number(value.toPrecision(digits));

const isTyped = (raw: Nullable<ICellData>): boolean => raw?.v != null && raw.f == null && raw.si == null;

export function shortenNumbers(univer: Univer): void {
  univer
    .__getInjector()
    .get(SheetInterceptorService)
    .intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
      id: "kerfsheet-digits",
      // After what fills the cells of a spill, before the formats.
      priority: InterceptCellContentPriority.NUMFMT - 0.5,
      effect: InterceptorEffectEnum.Value,
      handler: (cell, { rawData, workbook }, next) => {
        if (typeof cell?.v !== "number" || isTyped(rawData)) return next(cell);
        const style = workbook.getStyles().getStyleByCell(cell);
        return next(style?.n?.pattern == null ? { ...cell, v: short(cell.v) } : cell);
      },
    });
}

/** Padding of a cell, both sides [px]. */
const padding = 8;
/** A column is not made wider than this for a number [px]. */
const widest = 160;

/** Rows that are measured; a long sheet would hold every calculation up. */
const mostMeasured = 1000;

/** Columns too narrow for a number in them are widened; text may run over its neighbour. Not a step of undo, and not saved. */
export function widenColumns(api: FUniver): void {
  const book = api.getActiveWorkbook();
  const sheet = book?.getActiveSheet();
  if (book == null || sheet === undefined) return;
  const pen = document.createElement("canvas").getContext("2d")!;
  pen.font = "11pt system-ui, sans-serif";
  const shown = sheet
    .getRange(0, 0, Math.min(mostMeasured, sheet.getLastRow() + 1), sheet.getLastColumn() + 1)
    .getDisplayValues();
  const needed = new Map<number, number>();
  for (const line of shown)
    line.forEach((text, c) => {
      if (text === "" || !/^[-+\d.,%\s$€]+$/.test(text)) return;
      needed.set(c, Math.max(needed.get(c) ?? 0, pen.measureText(text).width + padding));
    });
  for (const [c, width] of needed) {
    const has = sheet.getColumnWidth(c);
    if (width <= has || has >= widest) continue;
    const ranges = [{ startRow: 0, endRow: sheet.getMaxRows() - 1, startColumn: c, endColumn: c }];
    const to = {
      unitId: book.getId(),
      subUnitId: sheet.getSheetId(),
      ranges,
      colWidth: Math.min(widest, Math.ceil(width)),
    };
    void api.executeCommand("sheet.mutation.set-worksheet-col-width", to);
  }
}
