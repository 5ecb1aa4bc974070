import { shown } from "../sheet/address";
import { element } from "./element";
import type { Selection } from "../sheet/sheet";
import type { State, Store } from "../sheet/store";

const where = (at: Selection): string => {
  const value = at.value === "" ? "empty" : String(at.value).slice(0, 60);
  return at.rows * at.columns === 1
    ? `Selected: ${shown(at)}, ${value}`
    : `Selected: ${shown(at, at.rows, at.columns)}`;
};

const words = ({ link, selection, reason, trouble }: State): string => {
  if (link.is !== "ready") return link.why;
  return selection === undefined ? trouble : reason === "" ? where(selection) : `${where(selection)}: ${reason}`;
};

/** The line that says where an insert would go, or why there is nowhere to go. */
export function targetLine(store: Store): HTMLElement {
  const line = element("p", { id: "target", class: "target" });
  store.watch(["link", "selection", "reason", "trouble"], (state) => {
    line.textContent = words(state);
    line.dataset["link"] = state.link.is;
  });
  return line;
}
