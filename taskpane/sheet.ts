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
}

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
