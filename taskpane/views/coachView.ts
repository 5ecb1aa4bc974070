import { catalogue } from "../../functions/catalogue";
import { column, type Entry } from "../../functions/bind/entry";
import { CellError, type Cell } from "../../functions/kinds/cell";
import { symptomDocs, symptomHeads } from "../../functions/reference/symptomSection";
import { coachRows } from "../../src/cutting/coachRows";
import { readSymptom } from "../../src/cutting/readSymptom";
import type { CutCheckInput } from "../../src/cutting/seeCut";
import { element, field, select } from "../controls/element";
import { callsIn } from "../sheet/callsIn";
import type { Store } from "../sheet/store";
import { callAgain } from "./callAgain";

const cutCheck = catalogue.find((e) => e.name === "CUTCHECK")!;

/** CUTCHECK with the same arguments, giving the causes of a symptom in full. */
const inFull = (symptom: string): Entry => ({
  ...cutCheck,
  result: {
    form: "table",
    columns: {
      cause: column("text", ""),
      raised: column("text", ""),
      check: column("text", ""),
      reason: column("text", ""),
      remedy: column("text", ""),
    },
  },
  run: (input: CutCheckInput) =>
    coachRows({ ...input, symptom: { ...readSymptom(symptom), blade: input.symptom?.blade } }),
});

const block = (cause: string, ...lines: readonly (readonly [head: string, text: string])[]): HTMLElement =>
  element(
    "li",
    {},
    element("strong", {}, cause),
    ...lines
      .filter(([, text]) => text !== "")
      .map(([head, text]) => element("p", {}, element("span", { class: "quiet" }, `${head}: `), text)),
  );

const usual = (name: string): HTMLElement => {
  const doc = symptomDocs().find((d) => d.name === name)!;
  return element(
    "div",
    {},
    element("p", {}, "In their usual order; select a cell with CUTCHECK to have them in the order of its cut."),
    element(
      "ol",
      {},
      ...doc.causes.map(([cause, ...texts]) =>
        block(cause, ...texts.map((text, i) => [symptomHeads[i + 1]!, text] as const)),
      ),
    ),
  );
};

const ordered = (cells: readonly (readonly Cell[])[]): HTMLElement =>
  element(
    "div",
    {},
    element("p", {}, "In the order of this cut's own numbers:"),
    element(
      "ol",
      {},
      ...cells.slice(1).map((line) => {
        const [cause, raised, check, reason, remedy] = line.map(String) as [string, string, string, string, string];
        return block(cause, ["raised by", raised], ["check", check], ["reason", reason], ["remedy", remedy]);
      }),
    ),
  );

/** The causes for the CUTCHECK in the selected cell; undefined where none stands there that can be asked again. */
async function ofSelected({ state }: Store, symptom: string): Promise<HTMLElement | undefined> {
  const { link, selection } = state;
  if (link.is !== "ready" || selection === undefined) return undefined;
  const found = callsIn(selection.formula).find((c) => c.name === "CUTCHECK");
  if (found === undefined) return undefined;
  const cells = await callAgain(found, selection.sheet, link.sheet, inFull(symptom));
  return cells === undefined || cells[0]![0] instanceof CellError ? undefined : ordered(cells);
}

/** What goes wrong with a cut: a symptom, when to stop, where to look first, and its causes with reason and remedy. */
export function coachView(store: Store): { readonly node: HTMLElement; readonly stop: () => void } {
  const docs = symptomDocs();
  const choice = select(
    "symptom",
    docs.map((d) => [d.name, d.say] as const),
  );
  const said = element("div", { "aria-live": "polite" });
  let turn = 0;
  const show = (): void => {
    const mine = (turn += 1);
    const { stop, lookFirst } = docs.find((d) => d.name === choice.value)!;
    const head = [
      element("p", {}, element("strong", {}, stop)),
      element("p", {}, `Look first: ${lookFirst}`),
      element("p", { class: "quiet" }, "Isolate and lock out before touching the band."),
    ];
    said.replaceChildren(...head, usual(choice.value));
    ofSelected(store, choice.value).then(
      (own) => {
        if (own !== undefined && mine === turn) said.replaceChildren(...head, own);
      },
      () => undefined,
    );
  };
  choice.addEventListener("change", show);
  const stop = store.watch(["selection"], show);
  return { node: element("div", {}, element("h3", {}, "What goes wrong"), field("Symptom", choice), said), stop };
}
