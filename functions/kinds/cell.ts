/** The only values that bind knows. A host turns its own values into these and back, and does nothing else. */
export type Cell = number | string | boolean | null | CellError;

/** Rows of cells; never empty, never jagged. */
export type Range = readonly (readonly Cell[])[];

/** An error in a cell: the code that the sheet shows, and the sentence that explains it where the host can show one. */
export class CellError {
  constructor(
    readonly code: string,
    readonly text = "",
  ) {}
}

/** Omitted, an empty cell and empty text are the same: Excel cannot tell them apart on every platform. */
export const isEmpty = (cell: Cell | undefined): boolean =>
  cell === null || cell === undefined || (typeof cell === "string" && cell.trim() === "");

/** Excel's desktop builds have passed 0 for an empty cell, so 0 is "not given" wherever it is not a value of its own. */
export const isBlank = (cell: Cell | undefined, zeroIsValue: boolean): boolean =>
  isEmpty(cell) || (cell === 0 && !zeroIsValue);
