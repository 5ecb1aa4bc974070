import { call } from "../../functions/bind/call";
import type { Entry } from "../../functions/bind/entry";
import { Memo } from "../../functions/bind/memo";
import { parseCall } from "../../functions/bind/parseCall";
import { catalogue } from "../../functions/catalogue";
import { CellError, type Cell } from "../../functions/kinds/cell";
import { printCell } from "../../functions/reference/describe";
import { element } from "../controls/element";
import { callsIn, type Call } from "../sheet/callsIn";
import { refusals } from "../sheet/refusals";
import type { Store } from "../sheet/store";
import { callAgain } from "./callAgain";
import type { RowFormula } from "./functionsView";

const working = catalogue.find((e) => e.name === "WORKING")!;

/** A call as WORKING takes it. */
const asked = ({ name, args }: Call): Call => ({ name: "WORKING", args: [`"${name}"`, ...args], whole: true });

/** The steps of the function's call in the selected cell, else of the formula offered for its row, else of the first example. */
async function cellsOf({ state }: Store, entry: Entry, formula: RowFormula): Promise<Cell[][] | undefined> {
  const { link, selection } = state;
  if (link.is !== "ready" || selection === undefined) {
    const { name, args } = parseCall(entry.examples[0]);
    return call(working, [[[name]], ...args], new Memo());
  }
  const found = [selection.formula, formula(selection)].flatMap(callsIn).find((c) => c.name === entry.name);
  return found === undefined ? undefined : callAgain(asked(found), selection.sheet, link.sheet, working);
}

const said = (cell: Cell | undefined): string => printCell(cell ?? "");

const line = ([step, symbol, formula, value, unit, source]: readonly Cell[]): HTMLElement =>
  element(
    "tr",
    {},
    element("th", { scope: "row" }, said(step), element("p", { class: "quiet" }, said(source))),
    element("td", {}, [said(symbol), said(formula)].filter((t) => t !== "").join(" = ")),
    element("td", {}, `${said(value)} ${said(unit)}`.trim()),
  );

/** How an answer comes about, as a table in the pane. */
export async function workingTable(store: Store, entry: Entry, formula: RowFormula): Promise<HTMLElement> {
  const cells = await cellsOf(store, entry, formula).catch(() => undefined);
  const first = cells?.[0]?.[0];
  if (cells === undefined) return element("p", {}, refusals.noWorking);
  if (first instanceof CellError) return element("p", {}, first.text === "" ? refusals.noWorking : first.text);
  return element("table", { "aria-label": "Working" }, element("tbody", {}, ...cells.slice(1).map(line)));
}
