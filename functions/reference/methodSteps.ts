import type { Entry } from "../bind/entry";
import { table } from "./reference";

const from = "<!-- steps: made by generate from the functions' own steps -->";
const to = "<!-- end of steps -->";

const kind = (formula: string): string => (formula === "" ? "given" : formula);

/** The steps of every function that has a working, as WORKING gives them, without values. */
const stepTables = (catalogue: readonly Entry[]): readonly string[] =>
  catalogue.flatMap(({ name, working }) =>
    working === undefined
      ? []
      : [
          `### ${name}`,
          "",
          ...table(
            ["step", "symbol", "formula", "source"],
            working.lines.map(([, symbol, step, formula, , source]) => [step, symbol, kind(formula), source]),
          ),
          "",
        ],
  );

/** docs/method.md with its steps made anew: page and cell are made from the same lines. */
export const withSteps = (page: string, catalogue: readonly Entry[]): string => {
  const [before, rest] = page.split(from) as [string, string];
  const after = rest.split(to)[1]!;
  return `${before}${from}\n\n${stepTables(catalogue).join("\n")}\n${to}${after}`;
};
