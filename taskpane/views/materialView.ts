import type { BladeClass } from "../../src/blade/bladeClass";
import { button, element } from "../controls/element";
import { cutTable } from "./cutTables";
import { cardFoot, cardHead } from "./materialCard";
import { materialInserts } from "../controls/materialInserts";
import { materialSearch } from "../controls/materialSearch";
import { readSize } from "../sheet/readings";
import { sectionField } from "../controls/sectionField";
import type { Store } from "../sheet/store";

const classes: readonly BladeClass[] = ["bi-metal", "carbide"];

const welcome = (): HTMLElement =>
  element(
    "div",
    { class: "welcome" },
    element("h2", {}, "What are you cutting?"),
    element(
      "p",
      {},
      "Type a grade above, by its name or any of its numbers: 17-4PH, S17400 and 1.4542 find the same card. It shows the cutting group, band speed, chip, removal rate, hazards, and where each value comes from.",
    ),
    element(
      "p",
      {},
      "Section draws a size and counts the teeth in it. Functions explains every formula. Shop puts the block of your saw's figures into the sheet.",
    ),
  );

/** The grades chosen so far, to go back to; they last as long as the page is open. */
const recents = (store: Store): HTMLElement => {
  const box = element("div", { class: "recents" });
  store.watch(["recents", "material"], (state) => {
    const others = state.recents.filter((m) => m !== state.material);
    box.hidden = others.length === 0;
    box.replaceChildren(
      element("span", { class: "quiet" }, "Before: "),
      ...others.map((material) =>
        button(material.name, () => {
          store.set({
            material,
            matched: material.name,
            recents: [material, ...state.recents.filter((m) => m !== material)],
          });
        }),
      ),
    );
  });
  return box;
};

/** Search, and the card of the grade that was chosen. */
export function materialView(store: Store): HTMLElement {
  const first = welcome();
  const [head, cuts, foot] = [element("div"), element("div"), element("div")];
  const card = element(
    "article",
    { "aria-label": "Grade" },
    head,
    materialInserts(store),
    element("h3", {}, "In the cut"),
    sectionField(store, "card-size"),
    cuts,
    foot,
  );
  store.watch(["material", "matched", "units"], ({ material, matched, units }) => {
    first.hidden = material !== undefined;
    card.hidden = material === undefined;
    if (material === undefined) return;
    head.replaceChildren(...cardHead(material, matched, units));
    foot.replaceChildren(...cardFoot(material));
  });
  store.watch(["material", "section", "units"], ({ material, section, units }) => {
    const shape = readSize(section, units);
    cuts.replaceChildren(
      ...(material === undefined || "problem" in shape
        ? []
        : classes.map((blade) => cutTable(shape.value, material, blade, units))),
    );
  });
  return element("div", {}, materialSearch(store), recents(store), first, card);
}
