/** What the pane needs of a spreadsheet, and nothing more. Excel gives it in office.ts, the try-it page from its grid. */
export interface Sheet {
  /** Where the user is; rejects with a plain sentence in its message when no cell is selected. */
  readonly selected: () => Promise<Selection>;
  /** Calls `tell` whenever another cell is selected. */
  readonly onSelect: (tell: () => void) => Promise<void>;
  /** The cells of ranges of the selection's sheet, of other sheets by "Name!A1:B2", or of defined names. */
  readonly read: (ranges: readonly string[]) => Promise<readonly (readonly (readonly Value[])[])[]>;
  /** Writes a block of cells in one step, or says why not. Nothing is written over unless the order says so. */
  readonly write: (order: Order) => Promise<Outcome>;
  /** Puts back what the last order wrote over. */
  readonly undo: () => Promise<Outcome>;
  /** The workbook's sheets in their order; rejects with a plain sentence, as the next two do. */
  readonly sheets: () => Promise<readonly Tab[]>;
  /** Some of a sheet's used rows, from this one on. */
  readonly block: (sheet: string, from: number) => Promise<Block>;
  /** Selects a cell. */
  readonly go: (place: Place) => Promise<void>;
  /** Makes a new sheet with the values of this one, which itself is only read. */
  readonly copyValues: (sheet: string) => Promise<Copied>;
  /** Types the formulas of these cells of one sheet again, as they are; why not, or empty text where it went well. */
  readonly reenter: (sheet: string, cells: readonly Stuck[]) => Promise<string>;
  /** Adds a row at the end of the table of this name, or says why not. */
  readonly append: (table: string, row: LoggedRow) => Promise<Outcome>;
}

/** What goes into a log, by the headings of its columns. */
export type LoggedRow = ReadonlyMap<string, string | number>;

/** The row's cells under a table's headings; where one is wanted that the table lacks, the sentence. */
export function logRow(heads: readonly unknown[], row: LoggedRow): readonly Content[] | string {
  const names = heads.map((h) => String(h).trim().toLowerCase());
  const missing = ["section", "material", "minutes"].find((wanted) => !names.includes(wanted));
  if (missing !== undefined) return `The table has no column "${missing}", so nothing was written.`;
  return names.map((name) => {
    const value = row.get(name) ?? "";
    return typeof value === "number" ? value : { text: value };
  });
}

/** A cell that shows #NAME? in spite of a formula of ours, and the formula as it is typed. */
export interface Stuck {
  readonly row: number;
  readonly column: number;
  readonly formula: string;
}

export interface Tab {
  readonly name: string;
  readonly hidden: boolean;
}

/** Rows of a sheet's used range, as they are typed and as they show. */
export interface Block {
  readonly row: number;
  readonly column: number;
  readonly formulas: readonly (readonly Value[])[];
  readonly values: readonly (readonly Value[])[];
  /** Cells in error that another cell's formula spills into; undefined where the sheet cannot tell. */
  readonly spills: readonly Spill[] | undefined;
  /** The row to read on from; undefined where nothing is left. */
  readonly next: number | undefined;
}

/** A cell, the formula that spills into it, and how far it lies from the formula's own cell. */
export interface Spill {
  readonly row: number;
  readonly column: number;
  readonly offset: readonly [rows: number, columns: number];
  readonly formula: string;
}

export type Copied =
  /** `errors` is how many of its cells hold an error, `unseen` how many cells of hidden rows and columns were left out. */
  | { readonly did: "copied"; readonly name: string; readonly errors: number; readonly unseen: number }
  | { readonly did: "refused"; readonly why: string };

export type Value = string | number | boolean;

/** A cell of a sheet, rows and columns counted from 0. */
export interface Place {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** The rows from some way above the selected cell down to it: its last row is the selected one, its first column is A. */
export interface Around {
  readonly top: number;
  readonly values: readonly (readonly Value[])[];
}

export interface Selection extends Place {
  readonly rows: number;
  readonly columns: number;
  /** Separate areas that are selected together. */
  readonly areas: number;
  readonly value: Value;
  /** As it is typed; empty where nothing is calculated. */
  readonly formula: string;
  readonly around: Around;
}

/** What goes into a cell: text stays text whatever it begins with; only `formula` is calculated. */
export type Content = number | { readonly text: string } | { readonly formula: string };

export type Contents = readonly (readonly Content[])[];

export interface Order {
  readonly at: Place;
  readonly cells: Contents;
  readonly overwrite: boolean;
  /** Wanted name for the written range; the next free one is taken. */
  readonly name?: string;
}

export type Outcome =
  | { readonly did: "written"; readonly name?: string }
  /** Something stands where the order would write: `holds` is the first such cell, as it is typed. */
  | { readonly did: "occupied"; readonly address: string; readonly holds: string }
  | { readonly did: "refused"; readonly why: string };

/** The one thing both sides know of the other: where the try-it page puts its sheet, and how it says that it is there. */
export const bridge = "kerfsheetSheet";
