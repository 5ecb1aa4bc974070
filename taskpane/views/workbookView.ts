import { shown } from "../sheet/address";
import { button, element, row } from "../controls/element";
import { logCut } from "./logCut";
import { listUses, type InError, type Uses } from "./listUses";
import { reenterView } from "./reenterView";
import { refusals } from "../sheet/refusals";
import type { Copied, Sheet, Tab } from "../sheet/sheet";
import type { Store } from "../sheet/store";

/** So many rows of one sentence are shown. */
const mostShown = 20;

const counted = (n: number, of: string): string => `${n.toLocaleString("en-US")} ${of}${n === 1 ? "" : "s"}`;
const messageOf = (problem: unknown): string => (problem instanceof Error ? problem.message : String(problem));

type Say = (text: string) => void;

/** A button that does one thing at a time with the sheet, and the line that says how it goes. */
function task(
  store: Store,
  verb: string,
  work: (sheet: Sheet, say: Say) => Promise<string>,
): { readonly button: HTMLButtonElement; readonly status: HTMLElement; readonly say: Say } {
  const status = element("p", { role: "status" });
  const say: Say = (text) => {
    status.textContent = text;
  };
  let busy = false;
  const run = async (): Promise<void> => {
    const { link } = store.state;
    if (busy || link.is !== "ready") return;
    busy = true;
    say(await work(link.sheet, say).catch(messageOf));
    busy = false;
  };
  const made = button(verb, () => void run(), { class: "main", "aria-describedby": "target" });
  store.watch(["link"], ({ link }) => {
    made.disabled = link.is !== "ready";
  });
  return { button: made, status, say };
}

/** The cells of a row as one. */
function rowsOf(all: readonly InError[]): readonly (readonly InError[])[] {
  const rows = new Map<string, InError[]>();
  for (const one of all) {
    const key = `${one.row} ${one.sheet}`;
    rows.set(key, [...(rows.get(key) ?? []), one]);
  }
  return [...rows.values()];
}

const rowLabel = ([first, ...more]: readonly InError[]): string =>
  `${shown(first!)}${more.length === 0 ? "" : ` and ${more.length} more`}${first!.line === "" ? "" : `: ${first!.line.slice(0, 60)}`}`;

/** The rows of one sentence, each a way to its first cell; a hidden sheet has none. */
function places(all: readonly InError[], hidden: Uses["hidden"], sheet: Sheet, say: Say): HTMLElement {
  const rows = rowsOf(all);
  const left = rows.slice(mostShown).reduce((n, row) => n + row.length, 0);
  return element(
    "p",
    { class: "recents" },
    ...rows.slice(0, mostShown).map((row) =>
      hidden.has(row[0]!.sheet)
        ? element("span", {}, `${rowLabel(row)} (hidden)`)
        : button(rowLabel(row), () => {
            sheet.go(row[0]!).catch((problem: unknown) => {
              say(messageOf(problem));
            });
          }),
    ),
    ...(left > 0 ? [`and ${counted(left, "more cell")}`] : []),
  );
}

const found = ({ groups, stuck, functions, unread, hidden }: Uses, sheet: Sheet, say: Say): readonly Node[] => [
  ...(unread === "" ? [] : [element("p", { class: "problem" }, unread)]),
  ...reenterView(sheet, stuck),
  ...(groups.length === 0
    ? []
    : [
        element("h3", {}, "In error"),
        element(
          "ul",
          { class: "list" },
          ...groups.map(([sentence, all]) =>
            element(
              "li",
              {},
              element("p", {}, element("strong", {}, counted(all.length, "cell")), `: ${sentence}`),
              places(all, hidden, sheet, say),
            ),
          ),
        ),
      ]),
  ...(functions.length === 0
    ? []
    : [
        element("h3", {}, "Cells by function"),
        element(
          "table",
          { "aria-label": "Cells by function" },
          element("tbody", {}, ...functions.map(([name, cells]) => row(`SAW.${name}`, counted(cells, "cell")))),
        ),
      ]),
];

function list(store: Store): readonly Node[] {
  const out = element("div");
  const {
    button: start,
    status,
    say,
  } = task(store, "List", async (sheet) => {
    out.replaceChildren();
    const uses = await listUses(sheet, say);
    out.replaceChildren(...found(uses, sheet, say));
    return `${counted(uses.cells, "cell")} ${uses.cells === 1 ? "uses" : "use"} Kerfsheet, ${uses.wrong} in error.`;
  });
  return [
    element(
      "p",
      {},
      "Which cells of all sheets use Kerfsheet, which are in error, and why. They are read here, in this pane, and nowhere else.",
    ),
    start,
    status,
    out,
  ];
}

const notCarried =
  "Not carried over: comments and notes, links, pictures, charts, names, tables, drop-downs, conditional colours, row heights, print set-up. To take it back, delete the new sheet. This workbook still holds all its other sheets: to send only the new ones, move them to a new workbook (right-click their tabs, Move or Copy, new book) and save that.";

const copiedWords = (sheet: string, copied: Copied): string => {
  if (copied.did === "refused") return copied.why;
  const { name, errors, unseen } = copied;
  return [
    `${sheet} is copied to ${name}.`,
    ...(unseen > 0 ? [`${counted(unseen, "cell")} of hidden rows and columns left out.`] : []),
    ...(errors > 0 ? [`Cells of it in error: ${errors}.`] : []),
  ].join(" ");
};

const copyIntro =
  "Each sheet that you choose becomes a new one with values, formats and column widths, and no formula. Hidden rows and columns stay out. Your own sheets are only read.";

const sheetBox = ({ name, hidden }: Tab, i: number): HTMLElement =>
  element(
    "div",
    {},
    element("input", { type: "checkbox", id: `sheet-${i}`, value: name }),
    element("label", { for: `sheet-${i}` }, hidden ? `${name} (hidden)` : name),
  );

/** Copies one sheet after the other and tells how each went; the number that were made. */
async function copyEach(
  sheet: Sheet,
  names: readonly string[],
  say: (text: string) => void,
  tell: (line: string) => void,
): Promise<number> {
  let made = 0;
  for (const name of names) {
    say(`Copying ${name} …`);
    const copied = await sheet.copyValues(name);
    if (copied.did === "copied") made += 1;
    tell(copiedWords(name, copied));
  }
  return made;
}

function copy(store: Store): readonly Node[] {
  const choice = element("fieldset", { class: "sheets" });
  const [done, after] = [element("ul"), element("p", { class: "quiet" }, notCarried)];
  const boxes = (): HTMLInputElement[] => [...choice.querySelectorAll("input")];
  const chosen = (): string[] =>
    boxes()
      .filter((b) => b.checked)
      .map((b) => b.value);
  const { button: start, status } = task(store, "Copy as values", async (sheet, say) => {
    done.replaceChildren();
    after.hidden = true;
    const names = chosen();
    if (names.length === 0) return refusals.noneChosen;
    const made = await copyEach(sheet, names, say, (line) => {
      done.append(element("li", {}, line));
    });
    after.hidden = made === 0;
    return `${counted(made, "sheet")} made.`;
  });
  const later = element("div", {}, choice, start, status, done, after);
  const { button: choose, status: trouble } = task(store, "Choose sheets", async (sheet) => {
    const all = await sheet.sheets();
    choice.replaceChildren(element("legend", {}, "Sheets to copy"), ...all.map(sheetBox));
    later.hidden = false;
    boxes()[0]?.focus();
    return "";
  });
  later.hidden = true;
  after.hidden = true;
  choose.className = "";
  return [element("h3", {}, "Sheets as values, to send"), element("p", {}, copyIntro), choose, trouble, later];
}

/** The cut behind a verdict of CUTCHECK, into the workbook's log. */
function log(store: Store): readonly Node[] {
  const { button: start, status } = task(store, "Log this cut", (sheet) => logCut(sheet));
  return [
    element("h3", {}, "The cut log"),
    element(
      "p",
      {},
      "Select a cell with a verdict of CUTCHECK: its cut is added as a row to the table named Cuts, which TUNE reads.",
    ),
    start,
    status,
  ];
}

/** The whole workbook: where our functions are, what is wrong with them, and sheets without them. */
export const workbookView = (store: Store): HTMLElement =>
  element("div", {}, element("h2", {}, "Workbook"), ...list(store), ...log(store), ...copy(store));
