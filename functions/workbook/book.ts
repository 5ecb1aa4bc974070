import { addressOf, type Area } from "../formula/cellAddress";
import { isYounger } from "../formula/cellErrors";

/** A workbook as its files hold it: what stands in each cell, nothing of its looks. */
export interface Book {
  readonly sheets: readonly BookSheet[];
  readonly names: readonly BookName[];
  readonly tables: readonly BookTable[];
}

export interface BookSheet {
  readonly name: string;
  /** Path of its part in the zip. */
  readonly part: string;
  readonly state: "visible" | "hidden" | "veryHidden";
  readonly cells: readonly BookCell[];
}

export type CellValue = string | number | boolean | null;

/** A value as a file keeps it: an error that is younger than the format as #VALUE!. */
export const storedError = (value: CellValue): CellValue => (isYounger(value) ? "#VALUE!" : value);

export interface BookCell {
  readonly row: number;
  readonly column: number;
  /** As it was last calculated, or typed; null where nothing is kept. */
  readonly value: CellValue;
  readonly formula: BookFormula | undefined;
}

/** The cells that another cell's formula fills, by address. */
export function filledCells({ cells }: BookSheet): ReadonlySet<string> {
  const filled = new Set<string>();
  for (const { row, column, formula } of cells) {
    if (formula?.area === undefined) continue;
    const { top, left, bottom, right } = formula.area;
    for (let r = top; r <= bottom; r += 1)
      for (let c = left; c <= right; c += 1) if (r !== row || c !== column) filled.add(addressOf(r, c));
  }
  return filled;
}

export interface BookFormula {
  /** As a person types it, without "="; empty for a follower of a shared formula. */
  readonly text: string;
  readonly is: "plain" | "shared" | "array" | "dataTable";
  /** Number of the shared formula that it belongs to. */
  readonly shared: number | undefined;
  /** The cells that an array or a spill fills. */
  readonly area: Area | undefined;
  /** The formula in the form in which Excel keeps it, where it calls our functions and the file keeps it in another. */
  readonly mend: string | undefined;
}

export interface BookName {
  readonly name: string;
  readonly refersTo: string;
  /** The one sheet it holds for; undefined for the whole workbook. */
  readonly sheet: string | undefined;
}

export interface BookTable {
  readonly name: string;
  readonly sheet: string;
  readonly area: Area;
  readonly columns: readonly string[];
  readonly headers: boolean;
  readonly totals: boolean;
}
