import {
  CellValueType,
  type ICellData,
  type IObjectMatrixPrimitiveType,
  type IRange,
  type Nullable,
} from "@univerjs/core";
import type { CellValue } from "./book";
import type { Area } from "../formula/cellAddress";

/** What the grid's engine holds, by row and column, as a workbook's cells. */

export type Matrix<T> = IObjectMatrixPrimitiveType<T> | undefined;

export const at = <T>(matrix: Matrix<T>, row: number, column: number): T | undefined => matrix?.[row]?.[column];

/** A cell's value; of a text with looks of its own (p) the plain text. */
export function valueIn(data: Nullable<ICellData>): CellValue {
  const { v, t, p } = data || {};
  if (v == null) return p == null ? null : (p.body?.dataStream.replace(/[\r\n]+$/, "") ?? null);
  return t === CellValueType.BOOLEAN ? Boolean(Number(v)) : v;
}

/** What an array formula fills: the engine remembers the cells that it would fill also where it finds its place taken. */
export const filledArea = (range: IRange | undefined, value: unknown): Area | undefined =>
  range === undefined || value === "#SPILL!"
    ? undefined
    : { top: range.startRow, left: range.startColumn, bottom: range.endRow, right: range.endColumn };
