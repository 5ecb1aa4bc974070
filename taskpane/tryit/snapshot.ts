import type {
  ICellData,
  IRange,
  ISheetDataValidationRule,
  IStyleData,
  IWorkbookData,
  IWorksheetData,
} from "@univerjs/core";
import { areaOf } from "../../functions/formula/cellAddress";
import {
  isInput,
  isSet,
  lookOf,
  sideOf,
  type RowStyle,
  type SampleCell,
  type SampleRow,
  type SampleSheet,
} from "../../functions/workbook/samples/sheet";

const styles: Readonly<Record<Exclude<RowStyle, "plain">, IStyleData>> = {
  title: { bl: 1, fs: 14 },
  legend: { it: 1 },
  note: { it: 1 },
  units: { it: 1, fs: 9, cl: { rgb: "#5c6770" } },
  label: { bl: 1 },
  head: { bl: 1, bg: { rgb: "#dfe8ee" }, tb: 3, vt: 2 },
  text: { tb: 3, vt: 1 },
};
const input: IStyleData = { bg: { rgb: "#fff6d6" } };
const sides = { left: {}, right: { ht: 3 }, inset: { ht: 1, pd: { l: 8 } } } as const;

const cellOf = (value: SampleCell, s: IStyleData): ICellData => {
  const content =
    typeof value === "number"
      ? { v: value, t: 2 }
      : value?.startsWith("=") === true
        ? { f: value }
        : value === null
          ? {}
          : { v: value, t: 1 };
  return { ...content, s };
};

/** A cell without a value still carries its look: results of a spilled formula fall into it. */
const rowData = (sheet: SampleSheet, row: SampleRow, r: number): Record<number, ICellData> => {
  const styleOf = (c: number): IStyleData => {
    const look = lookOf(row, c);
    return {
      // As words with a list beside them stand.
      vt: 2,
      ...(look === "plain" ? {} : styles[look]),
      ...sides[sideOf(sheet, r, c)],
      ...(row.style !== "plain" || row.formats[c] === undefined ? {} : { n: { pattern: row.formats[c] } }),
      ...(isInput(sheet, r, c) ? input : {}),
    };
  };
  return Object.fromEntries(
    sheet.widths.flatMap((_, c) => (isSet(sheet, r, c) ? [[c, cellOf(row.cells[c] ?? null, styleOf(c))]] : [])),
  );
};

const rangeOf = (area: string): IRange => {
  const { top, left, bottom, right } = areaOf(area)!;
  return { startRow: top, startColumn: left, endRow: bottom, endColumn: right };
};

const sheetData = (sheet: SampleSheet, id: string): Partial<IWorksheetData> => {
  const { rows = 0, columns = 0 } = sheet.frozen ?? {};
  return {
    id,
    name: sheet.name,
    rowCount: Math.max(200, sheet.rows.length + 20, sheet.room ?? 0),
    columnCount: Math.max(30, sheet.widths.length + 4),
    freeze: {
      xSplit: columns,
      ySplit: rows,
      startRow: rows === 0 ? -1 : rows,
      startColumn: columns === 0 ? -1 : columns,
    },
    columnData: Object.fromEntries(sheet.widths.map((w, i) => [i, { w }])),
    // Headings wrap: two lines of them are shown.
    rowData: Object.fromEntries(
      sheet.rows.flatMap((row, r) =>
        row.height !== undefined || row.style === "head" ? [[r, { h: row.height ?? 40 }]] : [],
      ),
    ),
    mergeData: (sheet.merged ?? []).map(rangeOf),
    cellData: Object.fromEntries(sheet.rows.map((row, r) => [r, rowData(sheet, row, r)])),
  };
};

const namesOf = (sheets: readonly SampleSheet[]) =>
  sheets.flatMap((sheet) =>
    Object.entries(sheet.names ?? {}).map(([name, area]) => [
      name,
      {
        id: name,
        name,
        formulaOrRefString: `${sheet.name}!${area.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2")}`,
        localSheetId: "AllDefaultWorkbook",
      },
    ]),
  );

/** Fixed lists only: the grid flags what a free one does not name as if it were wrong. */
const listsOf = ({ lists = [] }: SampleSheet): ISheetDataValidationRule[] =>
  lists
    .filter((l) => l.free !== true)
    .map(({ area, words }, i) => ({
      uid: `list${i}`,
      type: "list",
      formula1: words.join(","),
      ranges: [rangeOf(area)],
      allowBlank: true,
      showErrorMessage: true,
      errorStyle: 1,
      renderMode: 1,
    }));

/** The sample sheets as the grid's own workbook. */
export const snapshot = (sheets: readonly SampleSheet[]): Partial<IWorkbookData> => ({
  id: "demo",
  name: "demo",
  sheetOrder: sheets.map((_, i) => `sheet${i}`),
  sheets: Object.fromEntries(sheets.map((sheet, i) => [`sheet${i}`, sheetData(sheet, `sheet${i}`)])),
  resources: [
    { name: "SHEET_DEFINED_NAME_PLUGIN", data: JSON.stringify(Object.fromEntries(namesOf(sheets))) },
    {
      name: "SHEET_DATA_VALIDATION_PLUGIN",
      data: JSON.stringify(Object.fromEntries(sheets.map((sheet, i) => [`sheet${i}`, listsOf(sheet)]))),
    },
  ],
});
