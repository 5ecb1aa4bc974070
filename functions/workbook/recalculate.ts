import type { ICellData, IRange, Nullable } from "@univerjs/core";
import { storedError, type Book, type BookCell, type BookSheet, type CellValue } from "./book";
import { addressOf, type Area } from "../formula/cellAddress";
import { knows, startEngine } from "./engine";
import { circleOf } from "./circular";
import { BookFault } from "./fault";
import { beyond, formulasOf, type FormulaCell } from "./formulas";
import { callsOwn, toFile } from "./formulaText";
import { gridBook } from "./gridBook";
import { at, filledArea, valueIn, type Matrix } from "./gridCells";

/** A cell that is calculated: a formula's own, or one that it fills. */
export interface Recalculated {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** As typed, with "="; empty for a cell that another cell's formula fills. */
  readonly formula: string;
  /** What the file keeps; null for nothing. */
  readonly was: CellValue;
  readonly is: CellValue;
  /** Of one of our functions that refuses. */
  readonly sentence: string;
  /** What an array formula fills now; undefined for any other cell. */
  readonly area: Area | undefined;
  /** The formula in the form in which Excel keeps it, where the file keeps it in another. */
  readonly mend: string | undefined;
}

/** The sentence stays on a cell that has recovered: it counts only while the value is an error. */
const sentenceIn = ({ v, custom }: ICellData): string =>
  typeof v === "string" && v.startsWith("#")
    ? ((custom as { readonly sentence?: string } | undefined)?.sentence ?? "")
    : "";

const unite = (a: Area | undefined, b: Area | undefined): Area | undefined =>
  a === undefined || b === undefined
    ? (a ?? b)
    : { top: a.top, left: a.left, bottom: Math.max(a.bottom, b.bottom), right: Math.max(a.right, b.right) };

/** What the engine holds of one sheet. */
interface Results {
  readonly cells: Matrix<ICellData>;
  readonly spilled: Matrix<Nullable<ICellData>>;
  readonly areas: Matrix<IRange>;
}

/** The cells beside a formula's own that it fills, in the file or now. */
function filledBy(
  { sheet, cell }: FormulaCell,
  area: Area,
  { spilled }: Results,
  kept: ReadonlyMap<string, BookCell>,
): Recalculated[] {
  const filled: Recalculated[] = [];
  for (let row = area.top; row <= area.bottom; row += 1) {
    for (let column = area.left; column <= area.right; column += 1) {
      if (row === cell.row && column === cell.column) continue;
      filled.push({
        sheet: sheet.name,
        row,
        column,
        formula: "",
        was: kept.get(addressOf(row, column))?.value ?? null,
        is: valueIn(at(spilled, row, column)),
        sentence: "",
        area: undefined,
        mend: undefined,
      });
    }
  }
  return filled;
}

/** A follower of a shared formula has no text of its own, and loses its leader where that is mended. */
const mendOf = ({ cell, typed }: FormulaCell): string | undefined =>
  cell.formula!.is === "shared" && callsOwn(typed) ? toFile(typed) : cell.formula!.mend;

/** The cell of a formula and all that it fills. */
function results(formula: FormulaCell, found: Results, kept: ReadonlyMap<string, BookCell>): Recalculated[] {
  const { sheet, cell, typed } = formula;
  const { row, column } = cell;
  const data = at(found.cells, row, column) ?? {};
  const now = filledArea(at(found.areas, row, column), data.v);
  const area =
    cell.formula!.is === "array" ? (now ?? { top: row, left: column, bottom: row, right: column }) : undefined;
  const own = {
    sheet: sheet.name,
    row,
    column,
    formula: `=${typed}`,
    was: cell.value,
    is: valueIn(data) ?? 0,
    sentence: sentenceIn(data),
    area,
    mend: mendOf(formula),
  };
  const all = unite(cell.formula!.area, now);
  return all === undefined ? [own] : [own, ...filledBy(formula, all, found, kept)];
}

/** Measured on two cores: these take 31 s and 1.8 GB, and Node gives a program little more than twice that. */
const mostFormulas = 150_000;

function refuseUnknown(formulas: readonly FormulaCell[], book: Book): void {
  const [first] = beyond(book, formulas, knows).values();
  if (first !== undefined) throw new BookFault(`cannot be recalculated: ${first}`);
}

/** Cells named in a refusal; more would fill the screen. */
const mostNamed = 6;

function refuseCircle(book: Book, formulas: readonly FormulaCell[]): void {
  const circle = circleOf(book, formulas);
  if (circle === undefined) return;
  const cells = circle.map(({ sheet, cell }) => `${sheet.name}!${addressOf(cell.row, cell.column)}`);
  const named = cells.slice(0, mostNamed).join(", ") + (cells.length > mostNamed ? " …" : "");
  throw new BookFault(`cannot be recalculated: these cells depend on their own results: ${named}`);
}

/** In the file it is one cell's formula, and Excel would take one of the results by a rule of its own; writing any would be a guess. */
function refuseSpill({ sheet, cell }: FormulaCell, areas: Results["areas"]): void {
  if (cell.formula!.is !== "array" && at(areas, cell.row, cell.column) !== undefined)
    throw new BookFault(
      `cannot be recalculated: ${sheet.name}!${addressOf(cell.row, cell.column)} gives several results, and the file keeps it as a formula of one cell`,
    );
}

/**
 * Calculates every formula of a workbook with our functions and the engine's own.
 * @throws BookFault a formula that cannot be calculated here
 */
export async function recalculate(
  book: Book,
  tell: (done: number, of: number) => void = () => undefined,
): Promise<readonly Recalculated[]> {
  const formulas = formulasOf(book);
  if (formulas.length === 0) return [];
  if (formulas.length > mostFormulas)
    throw new BookFault(
      `holds ${formulas.length.toLocaleString("en")} formulas; at most ${mostFormulas.toLocaleString("en")} are recalculated`,
    );
  refuseUnknown(formulas, book);
  refuseCircle(book, formulas);
  const engine = startEngine();
  try {
    const loaded = await engine.calculate(gridBook({ book, formulas, kept: new Set() }), tell);
    const model = engine.model();
    const resultsOf = (sheet: BookSheet): Results => {
      const worksheet = loaded.getSheetBySheetName(sheet.name)!;
      const [unit, id] = [loaded.getUnitId(), worksheet.getSheetId()];
      return {
        cells: worksheet.getSnapshot().cellData,
        spilled: model.getArrayFormulaCellData()[unit]?.[id],
        areas: model.getArrayFormulaRange()[unit]?.[id],
      };
    };
    return book.sheets.flatMap((sheet) => {
      const found = resultsOf(sheet);
      const before = new Map(sheet.cells.map((c) => [addressOf(c.row, c.column), c]));
      return formulas
        .filter((f) => f.sheet === sheet)
        .flatMap((f) => {
          refuseSpill(f, found.areas);
          return results(f, found, before);
        });
    });
  } finally {
    engine.stop();
  }
}

/** Twelve digits of a double's fifteen to seventeen: other programs print fewer, and add up in another order. */
const closeness = 1e-11;

/** Two values that a person would call the same. */
export function isSame(a: CellValue, b: CellValue): boolean {
  if (typeof a === "number" && typeof b === "number")
    return Math.abs(a - b) <= closeness * Math.max(Math.abs(a), Math.abs(b)) || Math.abs(a - b) < 1e-13;
  return (storedError(a) ?? "") === (storedError(b) ?? "");
}
