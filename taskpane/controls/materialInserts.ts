import { catalogue } from "../../functions/catalogue";
import type { Entry } from "../../functions/bind/entry";
import type { Material } from "../../src/material/material";
import { quantities } from "../../src/quantities";
import { element, field, select } from "./element";
import { InsertControl } from "./insertControl";
import { filled, rowFormula } from "../sheet/rowFormula";
import type { Content, Contents, Selection } from "../sheet/sheet";
import type { State, Store } from "../sheet/store";

type Make = (material: Material, state: State, at: Selection) => Contents | string;

interface Choice {
  readonly id: string;
  readonly label: string;
  readonly make: Make;
}

const text =
  (of: (m: Material) => string): Make =>
  (m) => [[{ text: of(m) }]];
const number =
  (of: (m: Material, s: State) => number): Make =>
  (m, s) => [[of(m, s) satisfies Content]];
const entryOf = (name: string): Entry => catalogue.find((e) => e.name === name)!;

/** Written for the selected row: the row's own size, grade and blade where it has them, this card's where not. */
const formula =
  (name: string, show?: string): Make =>
  (material, state, at) =>
    filled(
      at,
      rowFormula(
        entryOf(name),
        at,
        new Map([
          ["section", state.section],
          ["material", material.name],
          ["blade", material.group?.blades["bi-metal"] === undefined ? "carbide" : "bi-metal"],
          ...(show === undefined ? [] : [["show", show] as const]),
        ]),
        state,
      ),
    );

const choices: readonly Choice[] = [
  { id: "name", label: "its name, as text", make: text((m) => m.name) },
  { id: "group", label: "its cutting group, as text", make: text((m) => m.group?.name ?? "none") },
  { id: "condition", label: "its condition, as text", make: text((m) => m.condition) },
  {
    id: "density",
    label: "its density, as a number",
    make: number((m, { units }) => m.density / quantities.density[units].factor),
  },
  { id: "least", label: "its least hardness, as a number", make: number((m) => m.hardness.least) },
  { id: "most", label: "its greatest hardness, as a number", make: number((m) => m.hardness.most) },
  {
    id: "tensile",
    label: "its tensile strength, as a number",
    make: number((m, { units }) => m.tensile / quantities.stress[units].factor),
  },
  { id: "rate", label: "formula: removal rate", make: formula("CUTRATE") },
  { id: "pitch", label: "formula: pitch to order", make: formula("PITCH") },
  { id: "speed", label: "formula: band speed", make: formula("CUTDATA", "band speed") },
  { id: "minutes", label: "formula: minutes of cutting", make: formula("CUTDATA", "minutes") },
  { id: "mass", label: "formula: density", make: formula("MATERIAL", "density") },
];

const preview = (content: Contents | string): string => {
  if (typeof content === "string") return content;
  const first = content[0]![0]!;
  return typeof first === "number" ? String(first) : "text" in first ? first.text : first.formula;
};

/** Puts the grade, one of its values or a formula for the selected row into the sheet. */
export function materialInserts(store: Store): HTMLElement {
  const pick = select(
    "what",
    choices.map(({ id, label }) => [id, label] as const),
  );
  const sample = element("code", { class: "sample" });
  const cells = (at: Selection): Contents | string => {
    const { material } = store.state;
    return material === undefined
      ? "Find a grade first."
      : choices[pick.selectedIndex]!.make(material, store.state, at);
  };
  const control = new InsertControl(store, { verb: "Insert", cells });
  const nowhere: Selection = {
    sheet: "",
    row: 0,
    column: 0,
    rows: 1,
    columns: 1,
    areas: 1,
    value: "",
    formula: "",
    around: { top: 0, values: [[]] },
  };
  const refresh = (): void => {
    sample.textContent = preview(cells(store.state.selection ?? nowhere));
    control.refresh();
  };
  pick.addEventListener("change", refresh);
  store.watch(["material", "units", "section", "selection", "shop"], refresh);
  return element(
    "div",
    {},
    element("h3", {}, "Into the sheet"),
    field("Insert", pick),
    element("p", {}, sample),
    control.node,
  );
}
