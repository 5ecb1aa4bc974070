import { text } from "../kinds";
import { column, entry, one, type Entry } from "../bind/entry";
import { answerWorking } from "../bind/working";

/** Never run: `answer` takes the call. */
const nothing: (asked: { readonly function: string }) => readonly [] = () => [];

/** The function that shows how the others come to their answers. */
export const workingOfAll = (catalogue: readonly Entry[]): Entry => {
  const worked = catalogue.filter((e) => e.working !== undefined);
  const working: Entry = entry({
    name: "WORKING",
    subject: "Whole add-in",
    help: "How an answer comes about: every step with symbol, formula, value, unit and source, or the reason of a refusal.",
    examples: [
      'SAW.WORKING("CUTRATE", "round 4", "A36", "bi-metal")',
      'SAW.WORKING("BREAKEVEN", {180, 600, 3}, {420, 1500, 10}, 60)',
    ],
    source: "the steps of the functions themselves; each formula is evaluated by another program in the tests",
    asks: ["how is it calculated", "show the working", "step by step", "why this number", "explain the result"],
    params: { function: one(text, `function name in quotes: ${worked.map((e) => e.name).join(", ")}`) },
    takes: { arguments: true },
    result: {
      form: "table",
      columns: {
        step: column("text", "what is found"),
        symbol: column("text", "as in the formulas below it"),
        formula: column("text", "empty: given, or read from a table; Σ: a sum; else from the symbols above"),
        value: column("text", "in mm, N, W, min; in the last row in your units"),
        unit: column("text", "of the value"),
        source: column("text", "where it comes from"),
      },
    },
    run: nothing,
    answer: answerWorking(() => working, worked),
  });
  return working;
};
