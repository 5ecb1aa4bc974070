import { BookFault } from "../../functions/workbook/fault";
import type { OpenedBook } from "../../functions/workbook/openBook";
import { openParts } from "../../functions/workbook/openParts";
import { packParts, patchBook } from "../../functions/workbook/patchBook";
import { readBook } from "../../functions/workbook/readBook";
import { button, element } from "../controls/element";
import { ask, askWhich } from "./ask";
import { makeDrafts, type Draft } from "./drafts";
import { download, readBytes, readFile, takeFiles } from "./files";
import type { Grid } from "./grid";
import { printSheet } from "./print";
import { Work } from "./work";

/** The bar above the grid: open, save, send, print, what is open, and the drafts of earlier visits. */

/** What cannot be kept in a file by patching its cells. */
const structural =
  /^sheet\.command\.(?:insert|remove|delete|move|copy)-(?:.*-)?(?:row|rows|col|cols|column|columns|sheet|worksheet|range)\b|^sheet\.command\.(?:insert-range|delete-range|set-worksheet-name|set-worksheet-order|set-worksheet-hide|set-worksheet-show)|worksheet-(?:name|order)/;

const keptNote = ({ kept }: OpenedBook): string => {
  const [first, ...more] = [...kept.values()];
  if (first === undefined) return "";
  return ` ${kept.size === 1 ? "One cell keeps" : `${kept.size} cells keep`} the last value: ${first}${more.length === 0 ? "" : ", and others"}.`;
};

const count = (n: number, what: string): string => `${n.toLocaleString("en")} ${what}${n === 1 ? "" : "s"}`;

const openedNote = (opened: OpenedBook): string =>
  `${opened.file}: ${count(opened.book.sheets.length, "sheet")}, ${count(opened.formulas.length, "formula")}. Pictures are not shown here, and stay in the file.${keptNote(opened)}`;

const byId = (id: string): HTMLElement => document.getElementById(id)!;
const note = (text: string): void => {
  byId("book").textContent = text;
};

const failed = (file: string, problem: unknown): void => {
  if (!(problem instanceof BookFault)) console.error(problem);
  note(
    problem instanceof BookFault ? `${file} ${problem.message}.` : `${file} could not be opened; nothing has changed.`,
  );
};

async function save(work: Work): Promise<void> {
  note("Calculating everything once more…");
  const { parts, cells, revision } = await work.parts();
  download(work.file(), packParts(parts));
  note(
    `Saved ${work.file()} to your downloads: ${count(cells, "cell")} changed, by you or by calculation. Values and formulas are saved; a changed look is not.`,
  );
  await work.saved(revision);
}

/** The chosen sheets as values, for who is to see these and nothing else. */
async function send(grid: Grid, work: Work): Promise<void> {
  const book = grid.api.getActiveWorkbook()!;
  const names = book
    .getSheets()
    .filter((s) => !s.isSheetHidden())
    .map((s) => s.getSheetName());
  const text =
    "Which sheets go into the file? It holds their values and looks, and no formula, no other sheet and no hidden row.";
  const only = await askWhich(text, names, book.getActiveSheet().getSheetName(), "Download");
  if (only === undefined) return;
  if (only.length === 0) {
    note("No sheet was chosen: nothing is sent.");
    return;
  }
  const { parts } = await work.parts();
  const { sendBook } = await import(/* webpackChunkName: "send" */ "../../functions/workbook/sendBook");
  const file = work.file().replace(/(\.xlsx)?$/i, " values.xlsx");
  download(file, await sendBook({ parts, book: readBook(parts), results: [], only }));
  note(`${file} is in your downloads: ${only.join(", ")} as values.`);
}

/** Whether something else may take the place of what is open. */
async function mayLeave(work: Work): Promise<boolean> {
  if (!work.changed()) return true;
  const answer = await ask(`${work.file()} has changes that are not saved to a file.`, [
    { id: "save", label: "Save, then open" },
    { id: "leave", label: "Open; keep a draft" },
    { id: "stay", label: "Stay here" },
  ]);
  if (answer === "save") await save(work);
  if (answer === "leave") await work.settle();
  return answer === "save" || answer === "leave";
}

const hour = (at: number): string =>
  new Date(at).toLocaleString("en", { day: "numeric", month: "short", hour: "2-digit", minute: "2-digit" });

/** A button of the bar; what goes wrong is said. */
function act(id: string, doIt: () => Promise<void>): void {
  byId(id).addEventListener("click", () => {
    doIt().catch((problem: unknown) => {
      console.error(problem);
      note("That did not work; nothing has changed.");
    });
  });
}

class Desk {
  readonly drafts = makeDrafts();
  readonly work: Work;

  constructor(
    readonly grid: Grid,
    private readonly starting: (formulas: number) => void,
  ) {
    this.work = new Work(grid, this.drafts, (text) => {
      byId("unsaved").textContent = text;
    });
  }

  async open(file: File): Promise<void> {
    try {
      if (!(await mayLeave(this.work))) return;
      note(`Reading ${file.name}…`);
      this.show(await readFile(file));
    } catch (problem) {
      failed(file.name, problem);
    }
  }

  /** Drafts of earlier visits; not that of the work in hand. */
  async offer(): Promise<void> {
    const earlier = await this.drafts.list().catch(() => []);
    byId("drafts").replaceChildren(
      ...earlier.filter((d) => !this.work.isDraft(d.id)).map((draft) => this.offered(draft)),
    );
  }

  private show(opened: OpenedBook, unsaved = false): void {
    this.starting(opened.formulas.length - opened.kept.size);
    this.grid.show(opened.data);
    this.work.take(opened, unsaved);
    note(openedNote(opened));
  }

  private async restore(draft: Draft): Promise<void> {
    try {
      const bytes = await this.drafts.bytes(draft.id);
      if (bytes === undefined || !(await mayLeave(this.work))) return;
      note(`Reading ${draft.file}…`);
      this.show(await readBytes(draft.file, packParts(patchBook(openParts(bytes), draft.changes))), true);
      await this.work.settle();
      await this.drafts.drop(draft.id);
      await this.offer();
    } catch (problem) {
      failed(draft.file, problem);
    }
  }

  private offered(draft: Draft): HTMLElement {
    return element(
      "p",
      {},
      `Not saved on an earlier visit: ${draft.file}, ${hour(draft.at)} `,
      button("Open the draft", () => void this.restore(draft)),
      " ",
      button("Throw it away", () => void this.drafts.drop(draft.id).then(() => this.offer())),
    );
  }
}

/** `starting` is told when a new book begins to calculate, and how many formulas it has. */
export function bookBar(grid: Grid, starting: (formulas: number) => void): Work {
  const desk = new Desk(grid, starting);
  const { work, drafts } = desk;
  takeFiles(byId("open"), byId("file") as HTMLInputElement, (file) => void desk.open(file));
  act("save", () => save(work));
  act("send", () => send(grid, work));
  act("print", () => printSheet(grid));
  grid.beforeCommand((id) => {
    if (/text-to-number|protection|permission/.test(id)) {
      note("Grades such as 304 stay text, and nothing is locked here: that is done in Excel.");
      return false;
    }
    if (!structural.test(id)) return true;
    note("Rows, columns and sheets are added, moved and named in Excel: here only cells are saved.");
    return false;
  });
  void drafts
    .clean()
    .catch(() => undefined)
    .then(() => desk.offer());
  return work;
}
