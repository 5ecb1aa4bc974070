/** Why a sheet would not do something, in words; used by Excel's side and by the try-it page's. */
export const refusals = {
  noCell: "No cell is selected. Click a cell, then insert.",
  areas: "Several areas are selected. Select one cell, or one column of cells to fill.",
  gone: (sheet: string): string => `There is no sheet ${sheet} any more. Click the cell to write to.`,
  protected: (sheet: string): string => `${sheet} is protected, so nothing was written. Remove the protection (Review, Unprotect Sheet) or choose an unlocked cell.`,
  editing: "A cell is being edited. Press Enter or Esc in the sheet, then insert again.",
  outside: "It does not fit: the block would reach beyond the edge of the sheet.",
  nothing: "There is nothing to undo.",
  unknown: (detail: string): string => `The sheet did not accept it (${detail}). Nothing was written; try another cell.`,
} as const;
