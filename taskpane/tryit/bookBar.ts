import { BookFault } from "../../functions/workbook/fault";
import { gridChanges, type SheetNow } from "../../functions/workbook/gridChanges";
import { openBook, type OpenedBook } from "../../functions/workbook/openBook";
import { largest } from "../../functions/workbook/openParts";
import { packParts, patchBook } from "../../functions/workbook/patchBook";
import type { Grid } from "./grid";

/** Opening one's own workbook in the page and saving what was changed in it: read here, kept here, sent nowhere. */

const kind = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Measured in Chromium on two cores: 9 s from the file to its results, 372 MB; more would look like a page that hangs. */
const mostFormulas = 50_000;

/** What the grid holds now of one sheet of the opened workbook. */
const sheetNow =
  ({ api, formulas }: Grid) =>
  (name: string): SheetNow => {
    const book = api.getActiveWorkbook()!;
    const sheet = book.getSheetByName(name)!;
    const [unit, id] = [book.getId(), sheet.getSheetId()];
    return {
      cells: sheet.getSheet().getSnapshot().cellData,
      filled: formulas.getArrayFormulaCellData()[unit]?.[id],
      areas: formulas.getArrayFormulaRange()[unit]?.[id],
      formulaAt: (row, column) => formulas.getFormulaStringByCell(row, column, id, unit) ?? "",
    };
  };

/** What cannot be kept in a file by patching its cells. */
const structural =
  /^sheet\.command\.(?:insert|remove|delete|move|copy)-(?:.*-)?(?:row|rows|col|cols|column|columns|sheet|worksheet|range)\b|^sheet\.command\.(?:insert-range|delete-range|set-worksheet-name|set-worksheet-order|set-worksheet-hide|set-worksheet-show)|worksheet-(?:name|order)/;

function download(file: string, bytes: Uint8Array): void {
  const url = URL.createObjectURL(new Blob([bytes as BlobPart], { type: kind }));
  const link = document.createElement("a");
  link.href = url;
  link.download = file;
  link.click();
  setTimeout(() => {
    URL.revokeObjectURL(url);
  }, 10_000);
}

const keptNote = ({ kept }: OpenedBook): string => {
  const [first, ...more] = [...kept.values()];
  if (first === undefined) return "";
  return ` ${kept.size === 1 ? "One cell keeps" : `${kept.size} cells keep`} the last value: ${first}${more.length === 0 ? "" : ", and others"}.`;
};

const count = (n: number, what: string): string => `${n.toLocaleString("en")} ${what}${n === 1 ? "" : "s"}`;

const openedNote = (opened: OpenedBook): string =>
  `${opened.file}: ${count(opened.book.sheets.length, "sheet")}, ${count(opened.formulas.length, "formula")}. Charts and pictures are not shown here, and stay in the file.${keptNote(opened)}`;

async function readFile(file: File): Promise<OpenedBook> {
  if (file.size > largest.file)
    throw new BookFault(`is ${(file.size / 1e6).toFixed(0)} MB; at most ${largest.file / 1e6} MB are opened`);
  const opened = await openBook(file.name, new Uint8Array(await file.arrayBuffer()));
  if (opened.formulas.length > mostFormulas)
    throw new BookFault(
      `holds ${opened.formulas.length.toLocaleString("en")} formulas; this page calculates at most ${mostFormulas.toLocaleString("en")}, npm run recalc three times as many`,
    );
  return opened;
}

/** A file by the button, or dropped anywhere on the page. */
function takeFiles(button: HTMLElement, input: HTMLInputElement, take: (file: File) => void): void {
  const first = (files: FileList | null | undefined): void => {
    const [file] = files ?? [];
    if (file !== undefined) take(file);
  };
  button.addEventListener("click", () => {
    input.click();
  });
  input.addEventListener("change", () => {
    first(input.files);
    input.value = "";
  });
  document.addEventListener("dragover", (e) => {
    e.preventDefault();
  });
  document.addEventListener("drop", (e) => {
    e.preventDefault();
    first(e.dataTransfer?.files);
  });
}

/** The bar above the grid: open, save, what is open. `starting` is told when a new book begins to calculate. */
export function bookBar(grid: Grid, starting: () => void): void {
  const byId = (id: string): HTMLElement => document.getElementById(id)!;
  const [input, save, note] = [byId("file") as HTMLInputElement, byId("save") as HTMLButtonElement, byId("book")];
  let opened: OpenedBook | undefined;

  const open = async (file: File): Promise<void> => {
    try {
      note.textContent = `Reading ${file.name}…`;
      opened = await readFile(file);
      starting();
      grid.show(opened.data);
      save.disabled = false;
      note.textContent = openedNote(opened);
    } catch (problem) {
      if (!(problem instanceof BookFault)) console.error(problem);
      note.textContent =
        problem instanceof BookFault
          ? `${file.name} ${problem.message}.`
          : `${file.name} could not be opened; nothing has changed.`;
    }
  };
  const keep = async (): Promise<void> => {
    if (opened === undefined) return;
    note.textContent = "Calculating everything once more…";
    await grid.calculate();
    const changes = gridChanges(opened, sheetNow(grid));
    const cells = [...changes.values()].reduce((n, list) => n + list.length, 0);
    download(opened.file, packParts(patchBook(opened.parts, changes)));
    note.textContent = `Saved ${opened.file} to your downloads: ${count(cells, "cell")} changed, by you or by calculation. Values and formulas are saved; a changed look is not.`;
  };

  takeFiles(byId("open"), input, (file) => void open(file));
  save.addEventListener("click", () => void keep());
  grid.beforeCommand((id) => {
    if (opened === undefined || !structural.test(id)) return true;
    note.textContent =
      "Rows, columns and sheets of an opened workbook are added, moved and named in Excel: here only cells are saved.";
    return false;
  });
}
