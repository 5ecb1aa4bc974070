import { areaOf, inArea } from "../../formula/cellAddress";

/** What a sample sheet shows: text, numbers, and formulas that begin with "=". */
export type SampleCell = string | number | null;

export type Formats = Readonly<Record<number, string>>;

/** How the cells of a row are set. "legend" shows in its first cell how an input looks; "units" stands above the headings; "label" names what is beside it; "text" wraps. */
export type RowStyle = "title" | "legend" | "note" | "units" | "head" | "label" | "plain" | "text";

export interface SampleRow {
  readonly style: RowStyle;
  readonly cells: readonly SampleCell[];
  /** Number format by column (from 0). */
  readonly formats: Formats;
  /** Height [px], where the text needs more than a line. */
  readonly height?: number;
}

/** A table that Excel knows by name; its first row is its heading. */
export interface SampleTable {
  readonly name: string;
  readonly area: string;
}

/** The words to choose from in each cell of an area; `free`: anything else may be typed too. */
export interface SampleList {
  readonly area: string;
  readonly words: readonly string[];
  readonly free?: boolean;
}

export interface SampleSeries {
  /** The cell that names it. */
  readonly name: string;
  readonly across: string;
  readonly up: string;
  /** Drawn as points of this sign instead of a line. */
  readonly points?: "circle" | "dash";
}

export interface SampleChart {
  readonly kind: "lines" | "stacked columns";
  readonly title: string;
  /** The same for who cannot see it. */
  readonly says: string;
  readonly across: string;
  readonly up: string;
  /** Where the axes end; left out: with the largest value. */
  readonly ends?: { readonly across: number; readonly up: number };
  /** Numbers below 0 are shown too. */
  readonly signed?: true;
  /** Number formats along the axes; left out: whole numbers, and two places up where `ends` are given. */
  readonly shows?: { readonly across: string; readonly up: string };
  /** The cells that it covers. */
  readonly over: string;
  readonly series: readonly SampleSeries[];
}

/** How a sheet is printed: on one page, or as wide as one page and as long as it takes. */
export interface SamplePrint {
  readonly area: string;
  readonly pages: "one" | "wide";
  readonly turned: boolean;
}

/** One sheet: the try-it grid and the .xlsx file are both made of this. Areas are written as A1:B2, on this sheet. */
export interface SampleSheet {
  readonly name: string;
  /** Column widths [px]. */
  readonly widths: readonly number[];
  readonly rows: readonly SampleRow[];
  /** Rows and columns that stay in sight. */
  readonly frozen?: { readonly rows: number; readonly columns: number };
  /** Cells that a user fills. */
  readonly inputs?: readonly string[];
  readonly names?: Readonly<Record<string, string>>;
  readonly tables?: readonly SampleTable[];
  readonly lists?: readonly SampleList[];
  /** Areas that the one formula at their top left fills. */
  readonly spills?: readonly string[];
  readonly merged?: readonly string[];
  readonly charts?: readonly SampleChart[];
  readonly print?: SamplePrint;
  /** Rows that the try-it page must have: there formulas read a fixed number of them. */
  readonly room?: number;
}

/** A workbook file under docs/samples. */
export interface SampleBook {
  readonly file: string;
  readonly title: string;
  readonly sheets: readonly SampleSheet[];
}

const rowOf =
  (style: RowStyle) =>
  (...cells: readonly SampleCell[]): SampleRow => ({ style, cells, formats: {} });
export const title = rowOf("title");
export const note = rowOf("note");
export const units = rowOf("units");
export const head = rowOf("head");
export const label = rowOf("label");
export const plain = rowOf("plain");
/** Text that wraps, `lines` of it. */
export const text = (lines: number, ...cells: readonly SampleCell[]): SampleRow => ({
  ...rowOf("text")(...cells),
  height: 20 * lines,
});

/** Plain rows with the number formats of their table. */
export const formatted = (formats: Formats, rows: readonly SampleRow[]): readonly SampleRow[] =>
  rows.map((row) => (row.style === "plain" ? { ...row, formats } : row));

/** Every sheet says first that its data is invented, how an input looks, and that its figures are estimates. */
export const invented = (what: string, above: SampleRow = plain()): readonly SampleRow[] => [
  title(`${what} (an invented service centre, invented data)`),
  rowOf("legend")(
    "filled like this: type here",
    "Every result follows the inputs. Estimates; the machine's manual, local codes and a qualified person come first.",
  ),
  above,
];

const isIn = (areas: readonly string[] | undefined, row: number, column: number): boolean =>
  (areas ?? []).some((area) => inArea(areaOf(area)!, row, column));

/** Whether a cell is the user's to fill, or shows how such a cell looks. */
export const isInput = (sheet: SampleSheet, row: number, column: number): boolean =>
  (sheet.rows[row]?.style === "legend" && column === 0) || isIn(sheet.inputs, row, column);

/** Whether a cell is there at all: it holds something, will be filled, or is part of something seen. */
export const isSet = (sheet: SampleSheet, row: number, column: number): boolean => {
  const { style, cells, formats } = sheet.rows[row]!;
  return (
    (cells[column] ?? null) !== null ||
    (style === "plain" && formats[column] !== undefined) ||
    isInput(sheet, row, column) ||
    isIn(sheet.spills, row, column) ||
    isIn(sheet.merged, row, column)
  );
};

/** The look of a cell; of a row of labels only the first is one. */
export const lookOf = ({ style }: SampleRow, column: number): RowStyle =>
  style === "label" && column > 0 ? "plain" : style;

const readAcross: readonly RowStyle[] = ["title", "legend", "note", "text"];

/** Where a cell's content stands: numbers and their headings right, text beside them a little in. */
export function sideOf({ rows }: SampleSheet, row: number, column: number): "left" | "right" | "inset" {
  const { style } = rows[row]!;
  if (readAcross.includes(style)) return style === "legend" && column > 0 ? "inset" : "left";
  const told =
    style === "plain" || style === "label" ? rows[row] : rows.slice(row + 1).find((r) => r.style === "plain");
  if (told?.formats[column] !== undefined || typeof told?.cells[column] === "number") return "right";
  return column === 0 ? "left" : "inset";
}

/** Choices that several sheets offer. */
export const bladeClasses = ["bi-metal", "carbide"] as const;
export const someGrades = [
  "A36",
  "A992",
  "1018",
  "1045",
  "303",
  "304",
  "316",
  "4140",
  "4140 HT",
  "D2",
  "17-4PH",
  "6061-T6",
  "C36000",
  "N07718",
  "Ti-6Al-4V",
] as const;
