import {
  CellValueType,
  type ICellData,
  type ISheetDataValidationRule,
  type IWorkbookData,
  type IWorksheetData,
} from "@univerjs/core";
import { filledCells, type Book, type BookCell, type BookSheet } from "./book";
import { addressOf, areaOf } from "../formula/cellAddress";
import { tokensOf } from "../formula/tokens";
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

/** Beyond the last cell: the widest result with its neighbours, and the longest of a day's lists. */
const room = { rows: 200, columns: 40 };
const most = { rows: 1_048_576, columns: 16_384 };

interface Size {
  readonly rows: number;
  readonly columns: number;
}

const larger = (a: Size, b: Size): Size => ({
  rows: Math.max(a.rows, b.rows),
  columns: Math.max(a.columns, b.columns),
});

/** As far as the cells lie that formulas name. */
function named(formulas: readonly string[]): Size {
  let reach: Size = { rows: 0, columns: 0 };
  for (const formula of formulas)
    for (const { kind, text } of tokensOf(formula)) {
      const area = kind === "reference" ? areaOf(text.replace("#", "")) : undefined;
      if (area !== undefined)
        reach = larger(reach, {
          rows: Math.max(area.top, area.bottom) + 1,
          columns: Math.max(area.left, area.right) + 1,
        });
    }
  return reach;
}

/** The engine knows no cell outside a sheet's size: it must reach to the last cell that a formula names. */
function sizeOf(cells: readonly BookCell[], reach: Size): Size {
  let { rows, columns } = reach;
  for (const { row, column } of cells) [rows, columns] = [Math.max(rows, row + 1), Math.max(columns, column + 1)];
  return { rows: Math.min(most.rows, rows + room.rows), columns: Math.min(most.columns, columns + room.columns) };
}

/** An empty text is marked as one: the grid gives the type of a text to a cell that is emptied by hand, too. */
const typeOf = (value: string | number | boolean): CellValueType =>
  typeof value === "number"
    ? CellValueType.NUMBER
    : typeof value === "boolean"
      ? CellValueType.BOOLEAN
      : value === ""
        ? CellValueType.FORCE_STRING
        : CellValueType.STRING;

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

type Ids = ReadonlyMap<string, string>;

/** What the grid keeps beside the sheets: the names, and which cells take words of a list. */
const resourcesOf = (book: Book, ids: Ids, looks: BookLooks | undefined): NonNullable<IWorkbookData["resources"]> => [
  {
    name: "SHEET_DEFINED_NAME_PLUGIN",
    data: JSON.stringify(
      Object.fromEntries(
        namesOf(book).map(({ name, refersTo, sheet }, i) => [
          `name${i}`,
          {
            id: `name${i}`,
            name,
            formulaOrRefString: refersTo,
            localSheetId: sheet === undefined ? "AllDefaultWorkbook" : ids.get(sheet),
          },
        ]),
      ),
    ),
  },
  {
    name: "SHEET_DATA_VALIDATION_PLUGIN",
    data: JSON.stringify(
      Object.fromEntries(book.sheets.map((s) => [ids.get(s.name)!, looks?.lists.get(s.name) ?? []])),
    ),
  },
];

interface Given {
  readonly book: Book;
  readonly formulas: readonly FormulaCell[];
  /** Formulas that the engine cannot calculate: their cells keep their last value. */
  readonly kept: ReadonlySet<FormulaCell>;
  readonly looks?: BookLooks;
}

/** A workbook as the grid takes it. */
export function gridBook({ book, formulas, kept, looks }: Given): Partial<IWorkbookData> {
  const ids: Ids = new Map(book.sheets.map((s, i) => [s.name, `sheet${i}`]));
  const reach = named(formulas.map((f) => f.engine).concat(namesOf(book).map((n) => n.refersTo)));
  const sheets = book.sheets.map((sheet) => {
    const own = new Map(
      formulas.filter((f) => f.sheet === sheet).map((f) => [addressOf(f.cell.row, f.cell.column), f]),
    );
    const { rows, columns } = sizeOf(sheet.cells, reach);
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
  return {
    id: "book",
    name: "book",
    styles: looks?.styles ?? {},
    sheetOrder: sheets.map((s) => s.id),
    sheets: Object.fromEntries(sheets.map((s) => [s.id, s])),
    resources: resourcesOf(book, ids, looks),
  };
}
