import type { ICellData, IRange, Nullable } from "@univerjs/core";
import { filledCells, type BookCell, type BookSheet, type CellValue } from "./book";
import { addressOf, areaOf, type Area } from "../formula/cellAddress";
import type { FormulaCell } from "./formulas";
import { at, filledArea, valueIn, type Matrix } from "./gridCells";
import type { OpenedBook } from "./openBook";
import type { CellChange } from "./patchSheet";
import { isSame } from "./recalculate";

/** What the grid holds of one sheet now. */
export interface SheetNow {
  readonly cells: Matrix<Nullable<ICellData>>;
  /** What formulas fill beside their own cells. */
  readonly filled: Matrix<Nullable<ICellData>>;
  readonly areas: Matrix<IRange>;
  /** A cell's formula with "="; empty for none. */
  readonly formulaAt: (row: number, column: number) => string;
}

const sameArea = (a: Area | undefined, b: Area | undefined): boolean =>
  a?.bottom === b?.bottom && a?.right === b?.right;

/** One cell of the file and of the grid. */
interface Pair {
  readonly row: number;
  readonly column: number;
  readonly cell: BookCell | undefined;
  readonly formula: FormulaCell | undefined;
  /** The grid keeps its last value, whatever its formula is. */
  readonly kept: boolean;
  /** Another cell's formula filled it in the file. */
  readonly wasFilled: boolean;
}

/** A cell of the grid: its formula, or what it holds, or what another cell's formula puts into it. */
interface Held {
  readonly text: string;
  readonly value: CellValue;
  readonly filled: boolean;
  readonly area: Area | undefined;
}

function heldAt(now: SheetNow, row: number, column: number): Held {
  const [data, from, text] = [at(now.cells, row, column), at(now.filled, row, column), now.formulaAt(row, column)];
  const filled = text === "" && data?.v == null && from != null;
  return { text, filled, value: valueIn(filled ? from : data), area: filledArea(at(now.areas, row, column), data?.v) };
}

const gone = (formula: unknown): { readonly formula?: null } => (formula === undefined ? {} : { formula: null });

/** A cell with a formula: another one, or the same with another result. */
function calculated({ row, column, formula, kept }: Pair, { text, value, area }: Held): CellChange | undefined {
  const own = value === "#SPILL!" ? { top: row, left: column, bottom: row, right: column } : area;
  if (formula === undefined || kept || text !== `=${formula.engine}`)
    return { row, column, value, formula: text, ...(own && { area: own }) };
  const { is, area: before } = formula.cell.formula!;
  // One cell's formula in the file, but it fills several here, as the page shows: it is kept as what it is here.
  if (is !== "array" && own !== undefined) return { row, column, value, formula: formula.typed, area: own };
  const spill = is === "array" ? (area ?? { top: row, left: column, bottom: row, right: column }) : undefined;
  return isSame(formula.cell.value, value) && sameArea(spill, before) ? undefined : { row, column, value, area: spill };
}

/** A cell that another cell's formula fills, in the file or only now. */
const fed = ({ row, column, cell, formula, wasFilled }: Pair, value: CellValue): CellChange | undefined =>
  wasFilled && isSame(cell?.value ?? null, value) ? undefined : { row, column, value, filled: true, ...gone(formula) };

/** A cell that holds what was typed, or nothing. */
function plain({ row, column, cell, formula, kept, wasFilled }: Pair, held: CellValue): CellChange | undefined {
  const value = held === "" ? null : held;
  const holdsOn = formula === undefined || kept;
  const fromFormula = wasFilled && value !== null;
  return isSame(cell?.value ?? null, value) && holdsOn && !fromFormula
    ? undefined
    : { row, column, value, ...gone(cell?.formula) };
}

function changeOf(pair: Pair, now: SheetNow): CellChange | undefined {
  const held = heldAt(now, pair.row, pair.column);
  if (held.text !== "") return calculated(pair, held);
  return held.filled ? fed(pair, held.value) : plain(pair, held.value);
}

/** Followers of a shared formula whose leader is no longer what it was get their own text. */
function orphans(formulas: readonly FormulaCell[], changes: readonly CellChange[], now: SheetNow): CellChange[] {
  const changed = new Map(changes.map((c) => [addressOf(c.row, c.column), c]));
  const lost = new Set(
    formulas
      .filter(
        (f) =>
          f.cell.formula!.is === "shared" &&
          f.cell.formula!.text !== "" &&
          changed.get(addressOf(f.cell.row, f.cell.column))?.formula !== undefined,
      )
      .map((f) => f.cell.formula!.shared),
  );
  return formulas
    .filter(
      (f) =>
        f.cell.formula!.is === "shared" &&
        f.cell.formula!.text === "" &&
        lost.has(f.cell.formula!.shared) &&
        changed.get(addressOf(f.cell.row, f.cell.column))?.formula === undefined,
    )
    .map((f) => ({
      row: f.cell.row,
      column: f.cell.column,
      value: valueIn(at(now.cells, f.cell.row, f.cell.column)),
      formula: f.typed,
    }));
}

const placesIn = (matrix: SheetNow["cells"]): string[] =>
  Object.keys(matrix ?? {}).flatMap((row) =>
    Object.keys(matrix![Number(row)] ?? {}).map((column) => addressOf(Number(row), Number(column))),
  );

function sheetChanges(opened: OpenedBook, sheet: BookSheet, now: SheetNow): CellChange[] {
  const formulas = opened.formulas.filter((f) => f.sheet === sheet);
  const byAddress = new Map(formulas.map((f) => [addressOf(f.cell.row, f.cell.column), f]));
  const cells = new Map(sheet.cells.map((c) => [addressOf(c.row, c.column), c]));
  const filled = filledCells(sheet);
  const places = new Set(cells.keys());
  for (const place of placesIn(now.cells).concat(placesIn(now.filled))) places.add(place);
  const changes = [...places].flatMap((place) => {
    const { top: row, left: column } = areaOf(place)!;
    const [cell, formula] = [cells.get(place), byAddress.get(place)];
    const kept = formula !== undefined ? opened.kept.has(formula) : cell?.formula !== undefined;
    const wasFilled = formula === undefined && filled.has(place);
    const change = changeOf({ row, column, cell, formula, kept, wasFilled }, now);
    return change === undefined ? [] : [change];
  });
  const own = orphans(formulas, changes, now);
  const renewed = new Set(own.map((c) => addressOf(c.row, c.column)));
  return [...changes.filter((c) => !renewed.has(addressOf(c.row, c.column))), ...own];
}

/** What a person has changed since a workbook was opened, and all that follows from it, as changes of its parts. */
export const gridChanges = (
  opened: OpenedBook,
  now: (sheet: string) => SheetNow,
): ReadonlyMap<string, readonly CellChange[]> =>
  new Map(opened.book.sheets.map((sheet) => [sheet.part, sheetChanges(opened, sheet, now(sheet.name))]));
