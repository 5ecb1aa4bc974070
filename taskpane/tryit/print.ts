import type { IRange, IStyleData } from "@univerjs/core";
import { inArea } from "../../functions/formula/cellAddress";
import { element } from "../controls/element";
import type { Grid } from "./grid";

/** A sheet on paper: a table of its cells as they show, since the grid's canvas prints nothing. */

/** What a page of paper holds inside its margins [px of 1/96 in]: the smaller of A4 and Letter in each direction. */
const paper = { narrow: 690, long: 950 };
/** Text smaller than this share of its size is hard to read: then the sheet takes several pages. */
const smallest = 0.55;

const sides: Readonly<Record<number, string>> = { 1: "left", 2: "center", 3: "right" };

function look(cell: HTMLElement, style: IStyleData | null | undefined, isNumber: boolean): void {
  const { bl, it, fs, ht, tb, bg } = style ?? {};
  if (Number(bl) === 1) cell.style.fontWeight = "bold";
  if (Number(it) === 1) cell.style.fontStyle = "italic";
  if (fs !== undefined) cell.style.fontSize = `${fs}pt`;
  cell.style.textAlign = sides[Number(ht)] ?? (isNumber ? "right" : "left");
  cell.style.whiteSpace = Number(tb) === 3 ? "normal" : "nowrap";
  if (bg?.rgb != null) cell.style.background = bg.rgb;
}

type Sheet = ReturnType<NonNullable<ReturnType<Grid["api"]["getActiveWorkbook"]>>["getActiveSheet"]>;

/** How far a sheet reaches with something in it, results that formulas fill in among it. */
function reach(shown: readonly (readonly string[])[]): readonly [rows: number, columns: number] {
  let [rows, columns] = [0, 0];
  shown.forEach((line, r) => {
    line.forEach((text, c) => {
      if (text !== "") [rows, columns] = [Math.max(rows, r + 1), Math.max(columns, c + 1)];
    });
  });
  return [rows, columns];
}

interface Printed {
  readonly table: HTMLElement;
  readonly width: number;
  readonly height: number;
}

const isNumber = (text: string): boolean => text !== "" && Number.isFinite(Number(text.replace(/[,%]/g, "")));

/** One row of the sheet; what a merged cell covers is left out. */
function rowOf(sheet: Sheet, shown: readonly string[], r: number, columns: readonly number[]): HTMLElement {
  const inner = sheet.getSheet();
  const line = element("tr");
  line.style.height = `${sheet.getRowHeight(r)}px`;
  for (const c of columns) {
    const area = inner.getMergeData().find((m) => inArea(areaFrom(m), r, c));
    if (area !== undefined && (area.startRow !== r || area.startColumn !== c)) continue;
    const text = shown[c] ?? "";
    const cell = element("td", {}, text);
    if (area !== undefined) {
      cell.rowSpan = area.endRow - area.startRow + 1;
      cell.colSpan = area.endColumn - area.startColumn + 1;
    }
    look(cell, inner.getComposedCellStyle(r, c), isNumber(text));
    line.append(cell);
  }
  return line;
}

const areaFrom = (m: IRange) => ({ top: m.startRow, left: m.startColumn, bottom: m.endRow, right: m.endColumn });

function widthsOf(widths: readonly number[]): HTMLElement {
  return element(
    "colgroup",
    {},
    ...widths.map((w) => {
      const col = element("col");
      col.style.width = `${w}px`;
      return col;
    }),
  );
}

const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);
const upTo = (n: number): number[] => Array.from({ length: n }, (_, i) => i);

function tableOf(sheet: Sheet): Printed {
  const inner = sheet.getSheet();
  const all = sheet.getRange(0, 0, sheet.getLastRow() + 1, sheet.getLastColumn() + 1);
  const shown = all.getDisplayValues();
  const [height, width] = reach(shown);
  const rows = upTo(height).filter((r) => inner.getRowVisible(r));
  const columns = upTo(width).filter((c) => inner.getColVisible(c));
  const widths = columns.map((c) => sheet.getColumnWidth(c));
  const table = element("table", { class: "printed" }, widthsOf(widths));
  table.append(...rows.map((r) => rowOf(sheet, shown[r]!, r, columns)));
  table.style.width = `${sum(widths)}px`;
  return { table, width: sum(widths), height: sum(rows.map((r) => sheet.getRowHeight(r))) };
}

/** On one page where it stays readable, else as wide as one page; turned where that shows it larger. */
export async function printSheet({ api }: Grid): Promise<void> {
  const sheet = api.getActiveWorkbook()!.getActiveSheet();
  const { table, width, height } = tableOf(sheet);
  const turned = width > paper.narrow && width > height;
  const [w, h] = turned ? [paper.long, paper.narrow] : [paper.narrow, paper.long];
  const wide = Math.min(1, w / width);
  const whole = Math.min(wide, h / height);
  table.style.setProperty("zoom", String(whole >= smallest ? whole : wide));
  const box = document.getElementById("printed")!;
  const page = element("style", {}, `@page { size: ${turned ? "landscape" : "portrait"}; margin: 12mm; }`);
  box.replaceChildren(page, element("h1", {}, sheet.getSheetName()), table);
  await new Promise(requestAnimationFrame);
  window.print();
}
