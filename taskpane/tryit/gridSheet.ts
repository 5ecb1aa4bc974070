import { CellValueType, type ICellData } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { a1, absolute, freeName } from "../address";
import { refusals } from "../refusals";
import type { Content, Order, Outcome, Selection, Sheet, Value } from "../sheet";

const above = 60;
const across = 40;

type Book = NonNullable<ReturnType<FUniver["getActiveWorkbook"]>>;

/** Every field is named, so that nothing of the old cell stays. */
const cellOf = (content: Content): ICellData => {
  const plain = { v: null, t: null, f: null, si: null, p: null };
  if (typeof content === "number") return { ...plain, v: content, t: CellValueType.NUMBER };
  if ("formula" in content) return { ...plain, f: content.formula };
  return content.text === "" ? plain : { ...plain, v: content.text, t: CellValueType.FORCE_STRING };
};

const valueOf = (cell: unknown): Value => (typeof cell === "string" || typeof cell === "number" || typeof cell === "boolean" ? cell : "");

/** The first cell that would be written over. */
function taken({ at }: Order, cells: readonly (readonly unknown[])[]): Outcome | undefined {
  for (const [r, line] of cells.entries()) {
    const held = (line as readonly (ICellData | undefined)[]).map((cell) => cell?.f ?? cell?.v ?? "");
    const c = held.findIndex((text) => text !== "");
    if (c >= 0) return { did: "occupied", address: a1(at.row + r, at.column + c), holds: String(held[c]).slice(0, 60) };
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
  const place = { sheet: sheet.getSheetName(), row, column, rows: range.getHeight(), columns: range.getWidth(), areas: Math.max(1, ranges.length) };
  return Promise.resolve({ ...place, value: valueOf(sheet.getRange(row, column).getValue()), formula: sheet.getRange(row, column).getFormula(), around: { top, values: values.map((line) => line.map(valueOf)) } });
}

function readIn(book: Book, references: readonly string[]): ReturnType<Sheet["read"]> {
  return Promise.resolve(
    references.map((reference) => {
      const name = book.getDefinedName(reference);
      const range = name === null ? book.getActiveSheet().getRange(reference) : book.getActiveSheet().getRange(name.getFormulaOrRefString());
      return range.getValues().map((line) => line.map(valueOf));
    }),
  );
}

/** The grid of the try-it page as the pane knows a sheet. `listeners` are told when the selection may have moved. */
export function gridSheet(api: FUniver, listeners: Set<() => void>): Sheet {
  let last: { readonly order: Order; readonly cells: ICellData[][]; readonly name: string | undefined } | undefined;
  const book = () => api.getActiveWorkbook()!;
  const rangeOf = ({ at, cells }: Order) => book().getSheetByName(at.sheet)?.getRange(at.row, at.column, cells.length, cells[0]!.length);

  const write = (order: Order): Promise<Outcome> => {
    const range = rangeOf(order);
    if (range === undefined) return Promise.resolve({ did: "refused", why: refusals.gone(order.at.sheet) });
    const now = range.getCellDatas();
    const there = order.overwrite ? undefined : taken(order, now);
    if (there !== undefined) return Promise.resolve(there);
    const name = order.name === undefined ? undefined : freeName(order.name, [...book().getDefinedNames().map((n) => n.getName()), ...book().getSheets().map((s) => s.getSheetName())]); // this grid takes no name that a sheet has
    last = { order, name, cells: now.map((line) => line.map((cell) => ({ ...cellOf({ text: "" }), ...cell }))) };
    range.setValues(order.cells.map((line) => line.map(cellOf)));
    if (name !== undefined) book().insertDefinedName(name, absolute(order.at, order.cells.length, order.cells[0]!.length));
    return Promise.resolve({ did: "written", ...(name === undefined ? {} : { name }) });
  };
  const undo = (): Promise<Outcome> => {
    if (last === undefined) return Promise.resolve({ did: "refused", why: refusals.nothing });
    rangeOf(last.order)?.setValues(last.cells);
    if (last.name !== undefined) book().deleteDefinedName(last.name);
    last = undefined;
    return Promise.resolve({ did: "written" });
  };
  return { selected: () => selectedIn(book()), read: (references) => readIn(book(), references), write, undo, onSelect: (tell) => { listeners.add(tell); return Promise.resolve(); } };
}
