import { shown } from "../sheet/address";
import { button, element } from "./element";
import { refusals } from "../sheet/refusals";
import type { Contents, Order, Outcome, Selection, Sheet } from "../sheet/sheet";
import type { Store } from "../sheet/store";

interface Spec {
  readonly verb: string;
  /** What to write at this selection, or in one sentence why nothing can be. */
  readonly cells: (at: Selection) => Contents | string;
  /** Wanted name for what is written. */
  readonly name?: string;
  readonly done?: (outcome: Extract<Outcome, { did: "written" }>) => void;
}

const placeOf = (at: Selection | undefined): string =>
  at === undefined ? "" : `${shown(at, at.rows, at.columns)} ${at.areas}`;

/** One insert button: it says where it writes, asks on the spot before it writes over something, and can take it back. */
export class InsertControl {
  readonly node: HTMLElement;
  /** Ends it: the sheet's changes no longer reach it. */
  readonly stop: () => void;
  private readonly said = element("span");
  private readonly status = element("p", { role: "status" }, this.said);
  private readonly asked = element("div", { class: "asked", role: "group", "aria-label": "Write over what is there?" });
  private readonly main: HTMLButtonElement;
  private place = "";
  private writer: unknown;

  constructor(
    private readonly store: Store,
    private readonly spec: Spec,
  ) {
    this.main = button(spec.verb, () => void this.write(false), { class: "main", "aria-describedby": "target" });
    this.asked.hidden = true;
    this.asked.addEventListener("keydown", (e) => {
      if (e.key === "Escape") this.keep();
    });
    this.node = element("div", { class: "insert" }, this.main, this.asked, this.status);
    this.stop = store.watch(["link", "selection", "writer"], ({ selection, writer }) => {
      const another = writer !== this.writer && writer !== this;
      if (another || this.place !== placeOf(selection)) this.quiet();
      this.place = placeOf(selection);
      this.writer = writer;
      this.refresh();
    });
  }

  /** To be called when what would be written has changed. */
  refresh(): void {
    const { link, selection } = this.store.state;
    const content = selection === undefined || selection.areas > 1 ? "" : this.spec.cells(selection);
    this.main.disabled = link.is !== "ready" || selection === undefined;
    this.main.textContent =
      selection === undefined || typeof content === "string"
        ? this.spec.verb
        : `${this.spec.verb} into ${shown(selection, content.length, content[0]!.length)}`;
  }

  private say(text: string, ...more: readonly Node[]): void {
    this.said.textContent = text;
    this.status.replaceChildren(this.said, ...more);
  }

  private quiet(): void {
    this.say("");
    this.asked.replaceChildren();
    this.asked.hidden = true;
  }

  private keep(): void {
    this.quiet();
    this.main.focus();
  }

  private ask(address: string, holds: string): void {
    const over = button("Write over it", () => void this.write(true));
    this.asked.replaceChildren(
      element("p", {}, `${address} holds ${holds}`),
      over,
      button("Keep it", () => {
        this.keep();
      }),
    );
    this.asked.hidden = false;
    over.focus();
  }

  private async undo(sheet: Sheet): Promise<void> {
    const outcome = await sheet.undo();
    this.say(
      outcome.did === "written"
        ? "Undone: what was there is back."
        : outcome.did === "refused"
          ? outcome.why
          : refusals.nothing,
    );
    this.main.focus();
    this.store.state.look();
  }

  private settle(outcome: Outcome, order: Order, sheet: Sheet): void {
    if (outcome.did === "occupied") {
      this.ask(outcome.address, outcome.holds);
      return;
    }
    const wasAsked = this.asked.contains(document.activeElement);
    this.quiet();
    if (wasAsked) this.main.focus();
    if (outcome.did === "refused") {
      this.say(outcome.why);
      return;
    }
    this.store.set({ writer: this });
    const where = shown(order.at, order.cells.length, order.cells[0]!.length);
    this.say(
      outcome.name === undefined ? `Written into ${where}. ` : `Written into ${where} and named ${outcome.name}. `,
      button("Undo", () => void this.undo(sheet)),
    );
    this.spec.done?.(outcome);
    this.store.state.look();
  }

  private async write(overwrite: boolean): Promise<void> {
    const { link, selection } = this.store.state;
    if (link.is !== "ready" || selection === undefined) return;
    const content = selection.areas > 1 ? refusals.areas : this.spec.cells(selection);
    if (typeof content === "string") {
      this.say(content);
      return;
    }
    const { sheet, row, column } = selection;
    const order = {
      at: { sheet, row, column },
      cells: content,
      overwrite,
      ...(this.spec.name === undefined ? {} : { name: this.spec.name }),
    };
    this.settle(await link.sheet.write(order), order, link.sheet);
  }
}
