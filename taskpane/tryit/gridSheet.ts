import { CellValueType, type ICellData } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { addressOf } from "../../functions/formula/cellAddress";
import { absolute, freeName, isCells, splitReference } from "../sheet/address";
import { refusals } from "../sheet/refusals";
import {
  logRow,
  type Block,
  type Content,
  type LoggedRow,
  type Order,
  type Outcome,
  type Place,
  type Selection,
  type Sheet,
  type Value,
} from "../sheet/sheet";

const above = 60;
const across = 40;

type Book = NonNullable<ReturnType<FUniver["getActiveWorkbook"]>>;
type Range = ReturnType<ReturnType<Book["getActiveSheet"]>["getRange"]>;

/** Every field is named, so that nothing of the old cell stays. */
const cellOf = (content: Content): ICellData => {
  const plain = { v: null, t: null, f: null, si: null, p: null };
  if (typeof content === "number") return { ...plain, v: content, t: CellValueType.NUMBER };
  if ("formula" in content) return { ...plain, f: content.formula };
  return content.text === "" ? plain : { ...plain, v: content.text, t: CellValueType.FORCE_STRING };
};

const valueOf = (cell: unknown): Value =>
  typeof cell === "string" || typeof cell === "number" || typeof cell === "boolean" ? cell : "";

/** What formulas fill beside their own cells, as the engine keeps it. */
export type Filled = (unit: string, sheet: string, row: number, column: number) => unknown;

/** As calculated, not as shown; a cell that a formula spills into has its value in the engine only. */
const valuesOf = (range: Range, filled: Filled): Value[][] =>
  range
    .getRawValues()
    .map((line, r) =>
      line.map((raw, c) =>
        valueOf(raw ?? filled(range.getUnitId(), range.getSheetId(), range.getRow() + r, range.getColumn() + c)),
      ),
    );

/** The first cell that would be written over. */
function taken({ at }: Order, cells: readonly (readonly unknown[])[]): Outcome | undefined {
  for (const [r, line] of cells.entries()) {
    const held = (line as readonly (ICellData | undefined)[]).map((cell) => cell?.f ?? cell?.v ?? "");
    const c = held.findIndex((text) => text !== "");
    if (c >= 0)
      return { did: "occupied", address: addressOf(at.row + r, at.column + c), holds: String(held[c]).slice(0, 60) };
  }
  return undefined;
}

function selectedIn(book: Book): Promise<Selection> {
  const sheet = book.getActiveSheet();
  const ranges = sheet.getSelection()?.getActiveRangeList() ?? [];
  const range = ranges[0] ?? sheet.getActiveRange();
  if (range === null || range === undefined) return Promise.reject(new Error(refusals.noCell));
  const [row, column] = [range.getRow(), range.getColumn()];
  const top = Math.max(0, row - above);
  const values = sheet.getRange(top, 0, row - top + 1, Math.min(across, sheet.getMaxColumns())).getValues();
  const place = {
    sheet: sheet.getSheetName(),
    row,
    column,
    rows: range.getHeight(),
    columns: range.getWidth(),
    areas: Math.max(1, ranges.length),
  };
  return Promise.resolve({
    ...place,
    value: valueOf(sheet.getRange(row, column).getValue()),
    formula: sheet.getRange(row, column).getFormula(),
    around: { top, values: values.map((line) => line.map(valueOf)) },
  });
}

/** Rejects with what was thrown, as Excel's side does. */
const later = <T>(act: () => T): Promise<T> =>
  new Promise((done) => {
    done(act());
  });

function sheetOf(book: Book, name: string): NonNullable<ReturnType<Book["getSheetByName"]>> {
  const sheet = book.getSheetByName(name);
  if (sheet === null) throw new Error(refusals.gone(name));
  return sheet;
}

const readIn = (book: Book, references: readonly string[], filled: Filled): ReturnType<Sheet["read"]> =>
  later(() =>
    references.map((reference) => {
      const { sheet, rest } = splitReference(
        isCells(reference) ? reference : (book.getDefinedName(reference)?.getFormulaOrRefString() ?? reference),
      );
      const on = sheet === undefined ? book.getActiveSheet() : sheetOf(book, sheet);
      return valuesOf(on.getRange(rest.replace(/\$/g, "")), filled);
    }),
  );

/** The whole of a sheet at once: the grid holds it in this page anyway. It does not say what spills into a cell. */
function blockIn(book: Book, name: string, from: number, filled: Filled): Block {
  const sheet = sheetOf(book, name);
  const cells = sheet.getRange(from, 0, sheet.getLastRow() + 1 - from, sheet.getLastColumn() + 1);
  const formulas = cells.getFormulas();
  const values = valuesOf(cells, filled);
  return {
    row: from,
    column: 0,
    formulas: values.map((line, r) => line.map((v, c) => formulas[r]?.[c] || v)),
    values,
    spills: undefined,
    next: undefined,
  };
}

const goIn = (book: Book, { sheet, row, column }: Place): void => {
  const target = sheetOf(book, sheet);
  book.setActiveSheet(target);
  target.getRange(row, column).activate();
};

/** No name of a cell range may be that of a sheet, in this grid. */
const freeIn = (book: Book, name: string): string =>
  freeName(name, [...book.getDefinedNames().map((n) => n.getName()), ...book.getSheets().map((s) => s.getSheetName())]);

/** Writes orders into the book that is shown, and remembers the last one. */
function writer(book: () => Book): Pick<Sheet, "write" | "undo"> {
  let last: { readonly order: Order; readonly cells: ICellData[][]; readonly name: string | undefined } | undefined;
  const rangeOf = ({ at, cells }: Order) =>
    book().getSheetByName(at.sheet)?.getRange(at.row, at.column, cells.length, cells[0]!.length);

  const write = (order: Order): Promise<Outcome> => {
    const range = rangeOf(order);
    if (range === undefined) return Promise.resolve({ did: "refused", why: refusals.gone(order.at.sheet) });
    const now = range.getCellDatas();
    const there = order.overwrite ? undefined : taken(order, now);
    if (there !== undefined) return Promise.resolve(there);
    const name = order.name === undefined ? undefined : freeIn(book(), order.name);
    last = { order, name, cells: now.map((line) => line.map((cell) => ({ ...cellOf({ text: "" }), ...cell }))) };
    range.setValues(order.cells.map((line) => line.map(cellOf)));
    if (name !== undefined)
      book().insertDefinedName(name, absolute(order.at, order.cells.length, order.cells[0]!.length));
    return Promise.resolve({ did: "written", ...(name === undefined ? {} : { name }) });
  };
  const undo = (): Promise<Outcome> => {
    if (last === undefined) return Promise.resolve({ did: "refused", why: refusals.nothing });
    rangeOf(last.order)?.setValues(last.cells);
    if (last.name !== undefined) book().deleteDefinedName(last.name);
    last = undefined;
    return Promise.resolve({ did: "written" });
  };
  return { write, undo };
}

/** A grid has no tables: the sheet of that name whose headings stand within its first rows, and its first blank row below. */
function appendIn(book: Book, name: string, row: LoggedRow, write: Sheet["write"], filled: Filled): Promise<Outcome> {
  const sheet = book.getSheetByName(name);
  const lines = sheet === null ? [] : blockIn(book, name, 0, filled).values;
  const head = lines.slice(0, 20).findIndex((line) => line.includes("section") && line.includes("minutes"));
  if (head < 0) return Promise.resolve({ did: "refused", why: refusals.noTable(name) });
  const cells = logRow(lines[head]!, row);
  if (typeof cells === "string") return Promise.resolve({ did: "refused", why: cells });
  const free = lines.findIndex((line, r) => r > head && line.every((v) => v === ""));
  const at = { sheet: name, row: free < 0 ? lines.length : free, column: 0 };
  return write({ at, cells: [cells], overwrite: false });
}

/** The grid of the try-it page as the pane knows a sheet. `listeners` are told when the selection may have moved. */
export function gridSheet(api: FUniver, listeners: Set<() => void>, filled: Filled): Sheet {
  const book = () => api.getActiveWorkbook()!;
  const writes = writer(book);
  return {
    selected: () => selectedIn(book()),
    read: (references) => readIn(book(), references, filled),
    ...writes,
    onSelect: (tell) => {
      listeners.add(tell);
      return Promise.resolve();
    },
    sheets: () =>
      later(() =>
        book()
          .getSheets()
          .map((s) => ({ name: s.getSheetName(), hidden: s.isSheetHidden() })),
      ),
    block: (sheet, from) => later(() => blockIn(book(), sheet, from, filled)),
    go: (place) =>
      later(() => {
        goIn(book(), place);
        for (const tell of listeners) tell();
      }),
    copyValues: () => Promise.resolve({ did: "refused", why: refusals.excelOnly }),
    reenter: () => Promise.resolve(refusals.neverStuck),
    append: (table, row) => appendIn(book(), table, row, writes.write, filled),
  };
}
