import { InputError } from "../../src/errors";
import { isBlank, type Range } from "../kinds/cell";
import type { Param } from "./entry";
import { words } from "../kinds/words";

/** One argument laid out for the loop: where the cells of item (row, column) stand. A list is one item. */
export interface Laid {
  readonly name: string;
  readonly param: Param<unknown>;
  readonly cells: Range | null;
  readonly rows: number;
  readonly columns: number;
}

/** Counts the items of an argument. */
export function lay(name: string, param: Param<unknown>, cells: Range | null): Laid {
  if (cells === null || param.list !== undefined || param.kind.width === "row")
    return { name, param, cells, rows: 1, columns: 1 };
  const { width } = param.kind;
  const [rows, wide] = [cells.length, cells[0]!.length];
  if (wide % width !== 0)
    throw new InputError("invalid", name, `{parameter} takes ${width} neighbouring cells a row: it has ${wide}`);
  const columns = wide / width;
  if (!param.varies && rows * columns > 1)
    throw new InputError(
      "invalid",
      name,
      width === 1 ? "{parameter} takes one value, not a range" : `{parameter} takes one row of ${width} cells`,
    );
  return { name, param, cells, rows, columns };
}

/** A row of an argument that holds nothing in any of its cells. */
export function isBlankRow({ cells, param: { kind } }: Laid, row: number): boolean {
  for (const cell of cells![row]!) if (!isBlank(cell, kind.zeroIsValue)) return false;
  return true;
}

/** Rows at the bottom that are blank in every range argument are dropped, all together. */
export function dropBlankRows(laid: readonly Laid[]): readonly Laid[] {
  const ranges = laid.filter((a) => a.rows > 1);
  const most = Math.max(1, ...ranges.map((a) => a.rows));
  if (ranges.some((a) => a.rows !== most)) return laid;
  let rows = most;
  while (rows > 1 && ranges.every((a) => isBlankRow(a, rows - 1))) rows -= 1;
  return rows === most ? laid : laid.map((a) => (a.rows > 1 ? { ...a, rows } : a));
}

/** The argument with most items along one axis; every other has one item there, or as many. */
function longest(laid: readonly Laid[], axis: "rows" | "columns"): number {
  let most: Laid | undefined;
  for (const a of laid) {
    if (most !== undefined && a[axis] > 1 && most[axis] > 1 && a[axis] !== most[axis])
      throw new InputError(
        "invalid",
        a.name,
        `{parameter} has ${a.rows} × ${a.columns} items, {other} ${most.rows} × ${most.columns}: sizes must match`,
        { other: words(most.name) },
      );
    if (a[axis] > (most?.[axis] ?? 0)) most = a;
  }
  return most?.[axis] ?? 1;
}

/** The rows and columns of the answer. Several results per item take columns of items only. */
export function sizeOf(
  laid: readonly Laid[],
  severalResults: boolean,
): { readonly rows: number; readonly columns: number } {
  const across = severalResults ? laid.find((a) => a.columns > 1) : undefined;
  if (across !== undefined)
    throw new InputError("invalid", across.name, "{parameter} must be a column here: each item gives a row of results");
  return { rows: longest(laid, "rows"), columns: longest(laid, "columns") };
}
