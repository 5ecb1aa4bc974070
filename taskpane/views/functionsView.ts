import { catalogue } from "../../functions/catalogue";
import { describe, type FunctionDoc } from "../../functions/reference/describe";
import type { Entry } from "../../functions/bind/entry";
import { words } from "../../functions/kinds/words";
import { button, element, field, row, select } from "../controls/element";
import { findFunctions } from "./findFunctions";
import { InsertControl } from "../controls/insertControl";
import { filled, rowFormula } from "../sheet/rowFormula";
import type { Selection } from "../sheet/sheet";
import type { Store } from "../sheet/store";

const few = 8;

/** The result of an example, as a cell or a small table. */
const result = (cells: readonly (readonly string[])[]): HTMLElement =>
  cells.length === 1 && cells[0]!.length === 1
    ? element("p", {}, "gives ", element("strong", {}, cells[0]![0]!))
    : element(
        "div",
        {},
        element(
          "table",
          { class: "cells", "aria-label": "Result" },
          element(
            "tbody",
            {},
            ...cells.slice(0, few).map((r) => element("tr", {}, ...r.map((c) => element("td", {}, c)))),
          ),
        ),
        ...(cells.length > few ? [element("p", { class: "quiet" }, `and ${cells.length - few} rows more`)] : []),
      );

/** The formula that is offered for a selected row. */
export type RowFormula = (at: Selection) => string;

export interface Part {
  readonly nodes: readonly Node[];
  readonly stop: () => void;
}

/** A formula for the selected row; where a function has several results, with the one that is picked. */
function forRow(store: Store, entry: Entry): Part & { readonly formula: RowFormula } {
  const { result: gives } = entry;
  const shows = gives.form === "row" ? Object.keys(gives.columns).map((c) => [words(c), words(c)] as const) : [];
  const pick = select("show", shows);
  if (gives.form === "row" && gives.main !== undefined) pick.value = words(gives.main);
  const sample = element("code", { class: "sample" });
  const make = (at: Selection): ((row: number) => string) => {
    const { section, material } = store.state;
    const literals = new Map([
      ["section", section],
      ...(material === undefined ? [] : [["material", material.name] as const]),
      ...(shows.length === 0 ? [] : [["show", pick.value] as const]),
    ]);
    return rowFormula(entry, at, literals, store.state);
  };
  const control = new InsertControl(store, { verb: "Insert", cells: (at) => filled(at, make(at)) });
  const refresh = (): void => {
    const { selection } = store.state;
    sample.textContent =
      selection === undefined ? "With a sheet, the cells of the selected row go in." : make(selection)(selection.row);
    control.refresh();
  };
  pick.addEventListener("change", refresh);
  const stop = store.watch(["selection", "section", "material", "units", "shop"], refresh);
  return {
    nodes: [...(shows.length === 0 ? [] : [field("Result", pick)]), element("p", {}, sample), control.node],
    formula: (at) => make(at)(at.row),
    stop: () => {
      stop();
      control.stop();
    },
  };
}

/** One example with what it gives. */
function example(store: Store, { formula, cells }: FunctionDoc["examples"][number]): Part {
  const control = new InsertControl(store, { verb: "Insert example", cells: () => [[{ formula: `=${formula}` }]] });
  return {
    nodes: [element("p", {}, element("code", { class: "sample" }, `=${formula}`)), result(cells), control.node],
    stop: control.stop,
  };
}

/** Words of a cell worth adding to the help: units and limits; the rest says itself. */
const isShape = (says: string): boolean => /^(?:number|whole|length|three)/.test(says);

const argumentList = (doc: FunctionDoc): readonly Node[] =>
  doc.arguments.length === 0
    ? []
    : [
        element("h3", {}, "Arguments"),
        element(
          "dl",
          {},
          ...doc.arguments.flatMap(([name, help, says]) => [
            element("dt", {}, name!),
            element("dd", {}, help!, ...(isShape(says!) ? [element("span", { class: "quiet" }, ` (${says!})`)] : [])),
          ]),
        ),
      ];

const resultTable = ({ results, gives }: FunctionDoc): readonly Node[] =>
  results.length === 0
    ? []
    : [
        element("h3", {}, "Results"),
        element("p", {}, gives),
        element(
          "table",
          { "aria-label": "Results" },
          element("tbody", {}, ...results.map(([name, unit, help]) => row(name!, unit!, help!))),
        ),
      ];

const helpLink = (name: string): HTMLElement =>
  element("a", { href: `${base()}help.html#${name}`, target: "_blank", rel: "noopener" }, `Help page of ${name}`);

/** What the pane adds to single functions, by their names. */
export type Extra = (store: Store, formula: RowFormula) => Part;
type Extras = ReadonlyMap<string, Extra>;

/** What one function is, with formulas to insert. */
function detail(store: Store, entry: Entry, back: () => void, extras: Extras): Part {
  const doc = describe(catalogue, entry);
  const mine = forRow(store, entry);
  const extra = extras.get(entry.name)?.(store, mine.formula);
  const examples = doc.examples.map((e) => example(store, e));
  const nodes = [
    button("All functions", back, { class: "back" }),
    element("h2", { tabindex: "-1" }, `SAW.${doc.name}`),
    element("p", {}, doc.help),
    element("p", {}, element("code", { class: "sample" }, doc.signature)),
    element("h3", {}, "For the selected row"),
    ...mine.nodes,
    ...(extra?.nodes ?? []),
    ...argumentList(doc),
    element("h3", {}, "Examples"),
    ...examples.flatMap((e) => e.nodes),
    ...resultTable(doc),
    element("p", {}, helpLink(doc.name)),
  ];
  return {
    nodes,
    stop: () => {
      for (const part of [mine, ...examples, ...(extra === undefined ? [] : [extra])]) part.stop();
    },
  };
}

/** The help page stands beside the pane's script, wherever the page itself stands. */
const base = (): string =>
  document
    .querySelector<HTMLScriptElement>('script[src$="pane.js"]')
    ?.getAttribute("src")
    ?.replace(/pane\.js$/, "") ?? "";

const askField = (): HTMLInputElement =>
  element("input", {
    id: "ask",
    type: "search",
    autocomplete: "off",
    spellcheck: "false",
    maxlength: "120",
    placeholder: "how long, which blade, cost per cut",
  });

function listed(entry: Entry, open: (entry: Entry, from: HTMLElement) => void): HTMLElement {
  const name: HTMLButtonElement = button(
    entry.name,
    () => {
      open(entry, name);
    },
    { class: "name" },
  );
  return element("li", {}, name, element("p", {}, entry.help));
}

/** Every function, found by its name or by what people ask. */
export function functionsView(store: Store, extras: Extras): HTMLElement {
  const input = askField();
  const status = element("p", { role: "status", class: "quiet" });
  const list = element("ul", { class: "list" });
  const one = element("div");
  const question = field("What do you want to know?", input);
  const finder = element("div", {}, element("h2", {}, "Functions"), question, status, list);
  const open = (entry: Entry, from: HTMLElement): void => {
    const back = (): void => {
      shown.stop();
      finder.hidden = false;
      one.replaceChildren();
      from.focus();
    };
    const shown = detail(store, entry, back, extras);
    finder.hidden = true;
    one.replaceChildren(...shown.nodes);
    one.querySelector("h2")?.focus();
  };
  const search = (): void => {
    const found = findFunctions(catalogue, input.value);
    status.textContent =
      found.length === 0
        ? "No function answers to these words. Try how long, which pitch, cost, or clear the field to see them all."
        : `${found.length} functions.`.replace(/^1 functions/, "1 function");
    list.replaceChildren(...found.map((entry) => listed(entry, open)));
  };
  input.addEventListener("input", search);
  search();
  return element("div", {}, finder, one);
}
