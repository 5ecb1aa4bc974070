import { BookFault } from "../../functions/workbook/fault";
import { openBook, type OpenedBook } from "../../functions/workbook/openBook";
import { largest } from "../../functions/workbook/openParts";

/** Files that come in and go out: read here, written to the downloads, sent nowhere. */

const kind = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Measured in Chromium on two cores: 9 s from the file to its results, 372 MB; more would look like a page that hangs. */
const mostFormulas = 50_000;

export function download(file: string, bytes: Uint8Array): void {
  const url = URL.createObjectURL(new Blob([bytes as BlobPart], { type: kind }));
  const link = document.createElement("a");
  link.href = url;
  link.download = file;
  link.click();
  setTimeout(() => {
    URL.revokeObjectURL(url);
  }, 10_000);
}

const isText = (file: string): boolean => /\.(?:csv|txt|tsv)$/i.test(file);

/** @throws BookFault what cannot be opened here, in words */
export async function readBytes(file: string, bytes: Uint8Array): Promise<OpenedBook> {
  const opened = isText(file)
    ? await import(/* webpackChunkName: "text" */ "../../functions/workbook/textBook").then(({ textBook }) =>
        textBook(file, bytes),
      )
    : await openBook(file, bytes);
  if (opened.formulas.length > mostFormulas)
    throw new BookFault(
      `holds ${opened.formulas.length.toLocaleString("en")} formulas; this page calculates at most ${mostFormulas.toLocaleString("en")}, npm run recalc three times as many`,
    );
  return opened;
}

export async function readFile(file: File): Promise<OpenedBook> {
  if (file.size > largest.file)
    throw new BookFault(`is ${(file.size / 1e6).toFixed(0)} MB; at most ${largest.file / 1e6} MB are opened`);
  return readBytes(file.name, new Uint8Array(await file.arrayBuffer()));
}

/** A file by the button, or dropped anywhere on the page. */
export function takeFiles(button: HTMLElement, input: HTMLInputElement, take: (file: File) => void): void {
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
