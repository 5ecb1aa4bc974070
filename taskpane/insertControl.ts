import { shown } from "./address";
import { button, element } from "./element";
import { refusals } from "./refusals";
import type { Contents, Order, Outcome, Selection } from "./sheet";
import type { Store } from "./store";

interface Spec {
  readonly verb: string;
  /** What to write at this selection, or in one sentence why nothing can be. */
  readonly cells: (at: Selection) => Contents | string;
  /** Wanted name for what is written. */
  readonly name?: string;
  readonly done?: (outcome: Extract<Outcome, { did: "written" }>) => void;
}

export interface InsertControl {
  readonly node: HTMLElement;
  /** To be called when what would be written has changed. */
  readonly refresh: () => void;
}

/** One insert button: it says where it writes, asks on the spot before it writes over something, and can take it back. */
export function insertControl(store: Store, { verb, cells, name, done }: Spec): InsertControl {
  const said = element("span", { class: "said" });
  const asked = element("div", { class: "asked", role: "group", "aria-label": "Write over what is there?" });
  const status = element("p", { role: "status" }, said);
  const main = button(verb, () => void write(false), { class: "main", "aria-describedby": "target" });

  const say = (text: string, ...more: readonly Node[]): void => {
    said.textContent = text;
    status.replaceChildren(said, ...more);
  };
  const quiet = (): void => {
    say("");
    asked.replaceChildren();
  };
  const ask = (address: string, holds: string): void => {
    const keep = button("Keep it", () => { quiet(); main.focus(); });
    const over = button("Write over it", () => void write(true));
    asked.replaceChildren(element("p", {}, `${address} holds ${holds}`), over, keep);
    over.focus();
  };
  const undo = async (): Promise<void> => {
    const { link } = store.state;
    if (link.is !== "ready") return;
    const outcome = await link.sheet.undo();
    say(outcome.did === "written" ? "Undone: what was there is back." : outcome.did === "refused" ? outcome.why : refusals.nothing);
    main.focus();
  };
  const settle = (outcome: Outcome, order: Order): void => {
    asked.replaceChildren();
    if (outcome.did === "occupied") return ask(outcome.address, outcome.holds);
    if (document.activeElement === null || document.activeElement === document.body) main.focus();
    if (outcome.did === "refused") return say(outcome.why);
    const where = shown(order.at, order.cells.length, order.cells[0]!.length);
    say(outcome.name === undefined ? `Written into ${where}. ` : `Written into ${where} and named ${outcome.name}. `, button("Undo", () => void undo()));
    done?.(outcome);
  };
  const write = async (overwrite: boolean): Promise<void> => {
    const { link, selection } = store.state;
    if (link.is !== "ready" || selection === undefined) return;
    const content = selection.areas > 1 ? "Several areas are selected. Select one cell, then insert." : cells(selection);
    if (typeof content === "string") return say(content);
    const order = { at: { sheet: selection.sheet, row: selection.row, column: selection.column }, cells: content, overwrite, ...(name === undefined ? {} : { name }) };
    settle(await link.sheet.write(order), order);
  };
  const refresh = (): void => {
    const { link, selection } = store.state;
    main.disabled = link.is !== "ready" || selection === undefined;
    const content = selection === undefined ? "" : cells(selection);
    main.textContent = selection === undefined || typeof content === "string" ? verb : `${verb} into ${shown(selection, content.length, content[0]!.length)}`;
  };

  asked.addEventListener("keydown", (e) => {
    if (e.key !== "Escape") return;
    quiet();
    main.focus();
  });
  store.watch(["link", "selection"], () => { refresh(); quiet(); });
  return { node: element("div", { class: "insert" }, main, asked, status), refresh };
}
