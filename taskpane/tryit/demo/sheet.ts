/** What a demo sheet shows: text, numbers, and formulas that begin with "=". */
export type DemoCell = string | number | null;

export type Formats = Readonly<Record<number, string>>;

/** How the cells of a row are set. */
export type RowStyle = "title" | "note" | "head" | "plain";

export interface DemoRow {
  readonly style: RowStyle;
  readonly cells: readonly DemoCell[];
  /** Number format by column (from 0). */
  readonly formats: Formats;
}

export interface DemoSheet {
  readonly name: string;
  /** Column widths [px]. */
  readonly widths: readonly number[];
  readonly rows: readonly DemoRow[];
}

export const title = (text: string): DemoRow => ({ style: "title", cells: [text], formats: {} });
export const note = (text: string): DemoRow => ({ style: "note", cells: [text], formats: {} });
export const head = (...cells: readonly DemoCell[]): DemoRow => ({ style: "head", cells, formats: {} });
export const plain = (...cells: readonly DemoCell[]): DemoRow => ({ style: "plain", cells, formats: {} });

/** Plain rows with the number formats of their table. */
export const formatted = (formats: Formats, rows: readonly DemoRow[]): readonly DemoRow[] => rows.map((row) => (row.style === "plain" ? { ...row, formats } : row));

/** Every sheet says first that its data is invented, and that its figures are estimates. */
export const invented = (what: string): readonly DemoRow[] => [
  title(`${what} of an invented service centre: invented data`),
  note("Change any input: every result follows. Estimates; the machine's manual, local codes and a qualified person come first."),
  plain(),
];
