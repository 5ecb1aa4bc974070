import type { ICellData, IStyleData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import type { DemoCell, DemoRow, DemoSheet, RowStyle } from "./demo/sheet";

const styles: Readonly<Record<Exclude<RowStyle, "plain">, IStyleData>> = {
  title: { bl: 1, fs: 14 },
  note: { it: 1 },
  head: { bl: 1, bg: { rgb: "#dfe8ee" }, tb: 3, vt: 3 },
};

const cellOf = (value: DemoCell, style: string | IStyleData | undefined): ICellData => {
  const s = style === undefined ? {} : { s: style };
  if (typeof value === "number") return { v: value, t: 2, ...s };
  return value?.startsWith("=") === true ? { f: value, ...s } : { v: value ?? "", t: 1, ...s };
};

/** A cell without a value still carries its format: results of a spilled formula fall into it. */
const rowData = ({ style, cells, formats }: DemoRow): Record<number, ICellData> => {
  const styleOf = (c: number): string | IStyleData | undefined => (style !== "plain" ? style : formats[c] === undefined ? undefined : { n: { pattern: formats[c] } });
  const columns = [...new Set([...cells.keys(), ...Object.keys(formats).map(Number)])];
  return Object.fromEntries(columns.flatMap((c) => {
    const value = cells[c] ?? null;
    const s = styleOf(c);
    return value !== null ? [[c, cellOf(value, s)]] : s === undefined || style !== "plain" ? [] : [[c, { s }]];
  }));
};

const sheetData = (sheet: DemoSheet, id: string): Partial<IWorksheetData> => {
  const frozen = sheet.rows.findIndex((r) => r.style === "head") + 1;
  return {
    id,
    name: sheet.name,
    rowCount: Math.max(200, sheet.rows.length + 20),
    columnCount: Math.max(30, sheet.widths.length + 4),
    freeze: { xSplit: 0, ySplit: frozen, startRow: frozen, startColumn: -1 },
    columnData: Object.fromEntries(sheet.widths.map((w, i) => [i, { w }])),
    // Headings wrap: two lines of them are shown.
    rowData: Object.fromEntries(sheet.rows.flatMap((row, r) => (row.style === "head" ? [[r, { h: 40 }]] : []))),
    cellData: Object.fromEntries(sheet.rows.map((row, r) => [r, rowData(row)])),
  };
};

/** The demo sheets as the grid's own workbook. */
export const snapshot = (sheets: readonly DemoSheet[]): Partial<IWorkbookData> => ({
  id: "demo",
  name: "demo",
  styles,
  sheetOrder: sheets.map((_, i) => `sheet${i}`),
  sheets: Object.fromEntries(sheets.map((sheet, i) => [`sheet${i}`, sheetData(sheet, `sheet${i}`)])),
});
