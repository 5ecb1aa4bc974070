import { CellValueType, type ICellData } from "@univerjs/core";
import { addressOf } from "../../functions/formula/cellAddress";
import type { Grid } from "./grid";

/** Lines out of a mail: the grid's own paste takes tabs only, and makes a date of 2/3. */

const sides = { "\t": "at tabs", ",": "at commas", ";": "at semicolons", "": "" } as const;

const dataOf = (value: string | number): ICellData => {
  const plain = { v: null, t: null, f: null, si: null, p: null };
  if (typeof value === "number") return { ...plain, v: value, t: CellValueType.NUMBER };
  if (value.startsWith("=")) return { ...plain, f: value };
  return value === "" ? plain : { ...plain, v: value, t: CellValueType.FORCE_STRING };
};

async function paste({ api }: Grid, text: string): Promise<void> {
  const { textRows } = await import(/* webpackChunkName: "rows" */ "../../functions/workbook/textRows");
  const { rows, sign } = textRows(text);
  const sheet = api.getActiveWorkbook()!.getActiveSheet();
  const at = sheet.getActiveRange();
  if (at === null || rows.length === 0) return;
  const width = Math.max(...rows.map((r) => r.length));
  const [row, column] = [at.getRow(), at.getColumn()];
  const note = document.getElementById("book")!;
  if (row + rows.length > sheet.getMaxRows() || column + width > sheet.getMaxColumns()) {
    note.textContent = `${rows.length} rows and ${width} columns from ${addressOf(row, column)} on do not fit on this sheet: nothing was pasted.`;
    return;
  }
  const cells = rows.map((r) => Array.from({ length: width }, (_, c) => dataOf(r[c] ?? "")));
  sheet.getRange(row, column, rows.length, width).setValues(cells);
  const columns = width === 1 ? "one column" : `${width} columns`;
  note.textContent = `Pasted at ${addressOf(row, column)}: ${rows.length} rows, ${columns}${sign === "" ? "" : `, parted ${sides[sign]}`}. Undo takes it back.`;
}

/** Text of several cells is taken here; a copy of cells, or one word, is the grid's own to paste. */
export function takePaste(grid: Grid): void {
  document.addEventListener(
    "paste",
    (event) => {
      const [text, html] = [
        event.clipboardData?.getData("text/plain") ?? "",
        event.clipboardData?.getData("text/html") ?? "",
      ];
      const inGrid = event.target instanceof Node && !(event.target instanceof HTMLInputElement);
      if (!inGrid || grid.api.getActiveWorkbook()?.isCellEditing() === true) return;
      if (!/[\t\n]/.test(text.trim()) || /<table/i.test(html)) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      void paste(grid, text);
    },
    { capture: true },
  );
}
