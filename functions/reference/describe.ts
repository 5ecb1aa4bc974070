import { quantities, type Units } from "../../src/quantities";
import { CellError, type Cell } from "../kinds/cell";
import { call } from "../bind/call";
import { type Entry, type Out } from "../bind/entry";
import { isRequired, repeats, slots, type Slot } from "../bind/slots";
import { parseCall } from "../bind/parseCall";
import { Memo } from "../bind/memo";
import { slotHelp, slotName, slotSays } from "../bind/slots";
import { plainNumber } from "../kinds/sentence";
import { otherwise, shopLabels } from "../shop/labels";
import { words } from "../kinds/words";

/** Everything that any page says of a function, from its entry; the results of the examples are computed here. */
export interface FunctionDoc {
  readonly name: string;
  readonly subject: string;
  readonly help: string;
  readonly signature: string;
  readonly asks: readonly string[];
  readonly arguments: readonly (readonly string[])[];
  /** Sentence before the results, and the results' rows where there are several. */
  readonly gives: string;
  readonly results: readonly (readonly string[])[];
  readonly examples: readonly { readonly formula: string; readonly cells: readonly (readonly string[])[] }[];
  readonly source: string;
}

export const argumentHeads = ["argument", "what it is", "what a cell may hold", "may be a range"] as const;
export const resultHeads = ["result", "unit", "what it is"] as const;
export const shopHeads = ["label", "what a cell may hold", "when left out", "what it is"] as const;

export const printCell = (cell: Cell): string =>
  cell instanceof CellError ? cell.code : typeof cell === "number" ? plainNumber(cell) : String(cell ?? "");

/** The results of a call of literals, computed. */
export const exampleResult = (catalogue: readonly Entry[], formula: string): Cell[][] => {
  const { name, args } = parseCall(formula);
  return call(
    catalogue.find((e) => e.name === name)!,
    args,
    new Memo(),
  );
};

const bothUnits = (say: (units: Units) => string): string => {
  const [inch, metric] = [say("inch"), say("metric")];
  return inch === metric ? inch : `${inch}; metric: ${metric}`;
};

const outUnit = (as: Out): string => (as === "text" ? "text" : bothUnits((u) => quantities[as][u].unit));

export const signature = (e: Entry): string =>
  `SAW.${e.name}(${slots(e)
    .map((s) => (isRequired(s) ? slotName(s) : `[${slotName(s)}${repeats(s) ? ", …" : ""}]`))
    .join(", ")})`;

const mayBeRange = (s: Slot): string => {
  if (s.role === "param") return s.param.varies ? "yes" : s.param.list !== undefined ? "a list" : "no";
  return { arguments: "as there", saw: "yes", settings: "the block", show: "a row of names", units: "no" }[s.role];
};

const gives = ({ result }: Entry): string => {
  if (result.form === "cell")
    return `Gives ${result.help}${outUnit(result.as) === "" ? "" : ` (${outUnit(result.as)})`}.`;
  if (result.form === "table") return "Gives a table with a heading row:";
  return result.main === undefined
    ? "show is required; it takes these names, all, or card:"
    : `show takes these names, all, or card; left out it gives ${words(result.main)}:`;
};

const results = ({ result }: Entry): readonly (readonly string[])[] =>
  result.form === "cell" ? [] : Object.entries(result.columns).map(([name, c]) => [words(name), outUnit(c.as), c.help]);

/** What the pages say of one function. */
export const describe = (catalogue: readonly Entry[], e: Entry): FunctionDoc => ({
  name: e.name,
  subject: e.subject,
  help: e.help,
  signature: signature(e),
  asks: e.asks,
  arguments: slots(e).map((s) => [
    isRequired(s) ? slotName(s) : `[${slotName(s)}]`,
    slotHelp(s),
    bothUnits((u) => slotSays(s, u)),
    mayBeRange(s),
  ]),
  gives: gives(e),
  results: results(e),
  examples: e.examples.map((formula) => ({
    formula,
    cells: exampleResult(catalogue, formula).map((row) => row.map(printCell)),
  })),
  source: e.source,
});

export const shopIntro =
  "A range of labels and values, passed as settings. The first row is Units with inch or metric beside it; it governs the block's own numbers and, when a call names no units, the call's. With several saws, a row Saw names one value column each and saw picks one; the column All fills their blanks. A last column of text is a comment. Labels match without regard to case; an unknown or doubled one is refused by name.";

/** The labels of the shop block, as rows under shopHeads. */
export const shopRows = (): readonly (readonly string[])[] =>
  shopLabels
    .map((l) => [
      `${l.label}${l.special === true ? ` (also followed by a group or a grade${l.byBlade === true ? ', and then by ", bi-metal" or ", carbide"' : ""})` : ""}`,
      bothUnits(l.kind.says),
      bothUnits((u) => otherwise(l, u)),
      l.help,
    ])
    .concat([
      [
        "Own material (may repeat)",
        "name, like a known grade, rate factor, density, price, in the cells beside it",
        "none",
        "a material of the shop's own, found before the table",
      ],
    ]);
