import { shopIntro } from "../../functions/reference/describe";
import { element } from "../controls/element";
import { InsertControl } from "../controls/insertControl";
import { shopCells } from "../sheet/shopCells";
import type { Content } from "../sheet/sheet";
import type { Store } from "../sheet/store";

const explained = (label: Content, note: Content): HTMLElement =>
  element("li", {}, element("strong", {}, (label as { text: string }).text), `: ${(note as { text: string }).text}`);

const intro =
  "Your saw and your prices, once, in the sheet: labels, values beside them, and what each means. Leave a value blank and its default holds.";

/** The shop block: what it is, and the whole of it ready to insert under a name. */
export function shopView(store: Store): HTMLElement {
  const list = element("ul", { class: "labels" });
  const named = element("p", { class: "quiet" });
  const control = new InsertControl(store, {
    verb: "Insert the block",
    name: "Shop",
    cells: () => shopCells(store.state.units),
    done: ({ name }) => {
      store.set({ shop: name });
    },
  });
  store.watch(["units"], ({ units }) => {
    list.replaceChildren(...shopCells(units).map(([label, , note]) => explained(label!, note!)));
    control.refresh();
  });
  store.watch(["shop"], ({ shop }) => {
    named.textContent =
      shop === undefined
        ? "It gets the name Shop. Formulas take it by that name: =SAW.CUTRATE(A5,B5,C5,,Shop)"
        : `In this sheet it is named ${shop}; formulas from this pane use it.`;
  });
  return element(
    "div",
    {},
    element("h2", {}, "Shop block"),
    element("p", {}, intro),
    control.node,
    named,
    element("details", {}, element("summary", {}, "What it may hold"), element("p", {}, shopIntro), list),
  );
}
