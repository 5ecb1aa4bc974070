import type { ICellData, ISheetDataValidationRule, IWorkbookData, IWorksheetData } from "@univerjs/core";
import { filledCells, type Book, type BookCell, type BookSheet } from "./book";
import { addressOf, columnOf } from "../formula/cellAddress";
import { namesOf, type FormulaCell } from "./formulas";

/** What a sheet looks like in the grid, beside its cells. */
export interface SheetLook {
  readonly sheet: Partial<IWorksheetData>;
  /** Names of styles by "row,column". */
  readonly styles: ReadonlyMap<string, string>;
}

/** What a whole workbook looks like. */
export interface BookLooks {
  readonly styles: NonNullable<IWorkbookData["styles"]>;
  readonly sheets: ReadonlyMap<string, SheetLook>;
  /** Cells that take words of a list, by sheet. */
  readonly lists: ReadonlyMap<string, readonly ISheetDataValidationRule[]>;
}

const room = { rows: 100, columns: 20 };
const most = { rows: 1_048_576, columns: 16_384 };

/** The engine knows no cell outside a sheet's size: it must reach to the last cell that a formula names. */
function reach(
  cells: readonly BookCell[],
  formulas: readonly string[],
): { readonly rows: number; readonly columns: number } {
  let [rows, columns] = [0, 0];
  const see = (row: number, column: number): void => {
    if (row < most.rows) rows = Math.max(rows, row + 1);
    if (column < most.columns) columns = Math.max(columns, column + 1);
  };
  for (const { row, column } of cells) see(row, column);
  for (const text of formulas)
    for (const [, letters, row] of text
      .replace(/"(?:[^"]|"")*"/g, "")
      .matchAll(/(?<![A-Za-z0-9_.])\$?([A-Za-z]{1,3})\$?([1-9]\d{0,6})(?![A-Za-z0-9_.(])/g))
      see(Number(row) - 1, columnOf(letters!));
  return { rows: Math.min(most.rows, rows + room.rows), columns: Math.min(most.columns, columns + room.columns) };
}

const typeOf = (value: string | number | boolean): number =>
  typeof value === "number" ? 2 : typeof value === "boolean" ? 3 : 1;

const dataOf = ({ value }: BookCell): ICellData =>
  value === null ? {} : { v: typeof value === "boolean" ? Number(value) : value, t: typeOf(value) };

/** The cells of a sheet for the engine. What a spill fills is left empty, or the spill would find its place taken. */
function cellData(
  sheet: BookSheet,
  formulas: ReadonlyMap<string, FormulaCell>,
  kept: ReadonlySet<FormulaCell>,
  look: SheetLook | undefined,
): IWorksheetData["cellData"] {
  const data: Record<number, Record<number, ICellData>> = {};
  const filled = filledCells(sheet);
  for (const [at, s] of look?.styles ?? []) {
    const [row, column] = at.split(",").map(Number) as [number, number];
    (data[row] ??= {})[column] = { s };
  }
  for (const cell of sheet.cells) {
    const formula = formulas.get(addressOf(cell.row, cell.column));
    const spilled = formula === undefined && filled.has(addressOf(cell.row, cell.column));
    const content =
      formula !== undefined && !kept.has(formula) ? { f: `=${formula.engine}` } : spilled ? {} : dataOf(cell);
    const row = (data[cell.row] ??= {});
    row[cell.column] = { ...row[cell.column], ...content };
  }
  return data;
}

/**
 * A workbook as the grid takes it.
 * @param kept formulas that the engine cannot calculate: their cells keep their last value
 */
export function gridBook({
  book,
  formulas,
  kept,
  looks,
}: {
  readonly book: Book;
  readonly formulas: readonly FormulaCell[];
  readonly kept: ReadonlySet<FormulaCell>;
  readonly looks?: BookLooks;
}): Partial<IWorkbookData> {
  const ids = new Map(book.sheets.map((s, i) => [s.name, `sheet${i}`]));
  const texts = formulas.map((f) => f.engine).concat(namesOf(book).map((n) => n.refersTo));
  const sheets = book.sheets.map((sheet) => {
    const own = new Map(
      formulas.filter((f) => f.sheet === sheet).map((f) => [addressOf(f.cell.row, f.cell.column), f]),
    );
    const { rows, columns } = reach(sheet.cells, texts);
    const look = looks?.sheets.get(sheet.name);
    return {
      ...look?.sheet,
      id: ids.get(sheet.name)!,
      name: sheet.name,
      rowCount: rows,
      columnCount: columns,
      hidden: Number(sheet.state !== "visible"),
      cellData: cellData(sheet, own, kept, look),
    };
  });
  const names = namesOf(book).map((n, i) => [
    `name${i}`,
    {
      id: `name${i}`,
      name: n.name,
      formulaOrRefString: n.refersTo,
      localSheetId: n.sheet === undefined ? "AllDefaultWorkbook" : ids.get(n.sheet),
    },
  ]);
  return {
    id: "book",
    name: "book",
    styles: looks?.styles ?? {},
    sheetOrder: sheets.map((s) => s.id),
    sheets: Object.fromEntries(sheets.map((s) => [s.id, s])),
    resources: [
      { name: "SHEET_DEFINED_NAME_PLUGIN", data: JSON.stringify(Object.fromEntries(names)) },
      {
        name: "SHEET_DATA_VALIDATION_PLUGIN",
        data: JSON.stringify(
          Object.fromEntries(book.sheets.map((s) => [ids.get(s.name)!, looks?.lists.get(s.name) ?? []])),
        ),
      },
    ],
  };
}
