import { gridChanges, type SheetNow } from "../../functions/workbook/gridChanges";
import type { OpenedBook } from "../../functions/workbook/openBook";
import { packParts, patchBook } from "../../functions/workbook/patchBook";
import type { Parts } from "../../functions/workbook/parts";
import { notKept, type Draft, type Drafts } from "./drafts";
import type { Grid } from "./grid";

/** The workbook that is open and what was changed in it since it was saved. Its draft follows every change. */

/** After the last of several changes, so that typing does not wait. */
const draftAfter = 1500;

/** What the grid holds now of one sheet. */
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

/** The page's own workbook is made a file only when one is wanted. */
const start = (): Promise<OpenedBook> =>
  import(/* webpackChunkName: "start" */ "../../functions/workbook/startBook").then(({ startBook }) => startBook());

let lastId = 0;
const newId = (): string => `${Date.now()}-${(lastId += 1)}-${crypto.randomUUID().slice(0, 8)}`;

interface State {
  opened: Promise<OpenedBook> | undefined;
  readonly isStart: boolean;
  file: string;
  id: string;
  /** Counts changes; what was saved is one of them. */
  revision: number;
  saved: number;
}

const fresh = (file: string, opened?: OpenedBook): State => ({
  opened: opened && Promise.resolve(opened),
  isStart: opened === undefined,
  file,
  id: newId(),
  revision: 0,
  saved: 0,
});

export class Work {
  private state = fresh("kerfsheet.xlsx");
  private timer = 0;
  private writing = Promise.resolve();

  constructor(
    private readonly grid: Grid,
    private readonly drafts: Drafts,
    private readonly tell: (text: string) => void,
  ) {
    grid.onChange(() => {
      this.touched();
    });
    window.addEventListener("beforeunload", (event) => {
      if (this.changed()) event.preventDefault();
    });
  }

  file(): string {
    return this.state.file;
  }

  isDraft(id: string): boolean {
    return this.state.id === id;
  }

  /** It is the page's own workbook. */
  isStart(): boolean {
    return this.state.isStart;
  }

  changed(): boolean {
    return this.state.revision !== this.state.saved;
  }

  /** What the open file holds; the page's own is made one now. */
  opened(): Promise<OpenedBook> {
    return (this.state.opened ??= start());
  }

  /** Another workbook is open from here on; `unsaved`: it came from a draft. */
  take(book: OpenedBook, unsaved: boolean): void {
    clearTimeout(this.timer);
    this.state = fresh(book.file, book);
    this.tell("");
    if (unsaved) this.touched();
  }

  /** Keeps the draft now, where a change waits for it. */
  async settle(): Promise<void> {
    clearTimeout(this.timer);
    if (this.changed()) await this.keepNow();
  }

  /** The workbook as it stands, calculated once more. */
  async parts(): Promise<{ readonly parts: Parts; readonly cells: number; readonly revision: number }> {
    const book = await this.opened();
    await this.grid.calculate();
    const { revision } = this.state;
    const changes = gridChanges(book, sheetNow(this.grid));
    const cells = [...changes.values()].reduce((n, list) => n + list.length, 0);
    return { parts: patchBook(book.parts, changes), cells, revision };
  }

  /** It was saved as it stood at this revision. */
  async saved(revision: number): Promise<void> {
    this.state.saved = revision;
    if (this.changed()) return;
    clearTimeout(this.timer);
    this.tell("");
    await this.drafts.drop(this.state.id).catch(() => undefined);
  }

  private touched(): void {
    this.state.revision += 1;
    this.tell("Not saved yet.");
    clearTimeout(this.timer);
    this.timer = window.setTimeout(() => void this.keepNow(), draftAfter);
  }

  /** One after the other, so that an older draft never lands on a newer. */
  private keepNow(): Promise<void> {
    const keep = (): Promise<void> => this.keep();
    return (this.writing = this.writing.then(keep, keep));
  }

  private async keep(): Promise<void> {
    const mine = this.state;
    const book = await this.opened();
    if (mine !== this.state || !this.changed()) return;
    const changes = gridChanges(book, sheetNow(this.grid));
    const draft: Draft = { id: mine.id, file: mine.file, at: Date.now(), changes };
    try {
      await this.drafts.keep(draft, () => packParts(book.parts));
      if (mine.revision === mine.saved) await this.drafts.drop(mine.id);
      else if (mine === this.state) this.tell("Not saved yet; a draft is kept in this browser.");
    } catch (problem) {
      this.tell(notKept(problem));
    }
  }
}
