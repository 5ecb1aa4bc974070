/** Why a sheet would not do something, in words; used by Excel's side and by the try-it page's. */
export const refusals = {
  noCell: "No cell is selected. Click a cell, then insert.",
  areas: "Several areas are selected. Select one cell, or one column of cells to fill.",
  gone: (sheet: string): string => `There is no sheet ${sheet} any more. Click a cell of another, then try again.`,
  protected: (sheet: string): string =>
    `${sheet} is protected, so nothing was written. Remove the protection (Review, Unprotect Sheet) or choose an unlocked cell.`,
  editing: "A cell is being edited. Press Enter or Esc in the sheet, then try again.",
  outside: "It does not fit: the block would reach beyond the edge of the sheet.",
  nothing: "There is nothing to undo.",
  structure:
    "The workbook's structure is protected, so no sheet can be added. Remove the protection (Review, Protect Workbook), then copy again.",
  clash: "Another sheet took the name meanwhile. Copy again.",
  noneChosen: "No sheet is chosen. Tick one, then copy.",
  empty: "No cell of it shows anything.",
  excelOnly: "Copying a sheet works in Excel only; this page has a grid without files.",
  neverStuck: "In this page no cell gets stuck: its functions are always there.",
  noTable: (name: string): string =>
    `There is no table named ${name} in this workbook, so nothing was written. Make one with the headings section, material, minutes (and date, saw, blade, pitch, band speed), or take the sample records.xlsx.`,
  noCheck: "Select a cell whose whole formula is SAW.CUTCHECK of one cut, then log it.",
  older: "This Excel is too old for it (it lacks ExcelApi 1.12).",
  notCopied: (sheet: string, why: string): string =>
    `${sheet} was not copied, and nothing of it is left behind. ${why}`,
  leftover: (made: string): string =>
    `It stopped halfway, and the new sheet ${made} could not be removed: delete it yourself. Your own sheet is as it was.`,
  stillFormula: "A formula came along into the copy, so the copy was removed.",
  noWorking:
    "The working is not read here: an argument is a formula of its own, or a cell that it reads is in error. Put it into a cell.",
  notLoaded: "This part of the pane did not load. Choose another tab, then this one again, when the network allows it.",
  unknown: (detail: string): string =>
    `The sheet did not accept it (${detail}), so nothing was done. Try again, or in another cell.`,
} as const;
