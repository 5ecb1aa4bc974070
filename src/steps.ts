import type { InputError } from "./errors";
import type { Text } from "./phrase";
import type { Quantity } from "./quantities";

/** What a value of a working is: a quantity, a density times a price, or text. */
export type StepUnit = Quantity | "text";

/**
 * The lines of a function's working in order, typed by the keys of its record of values. An empty formula is a value that is
 * given, or read from a table; one that begins with Σ is a sum; every other is calculated from the symbols above it.
 */
export type StepLines<R> = readonly (readonly [
  key: keyof R & string,
  symbol: string,
  name: string,
  formula: string,
  unit: StepUnit,
  source: string,
])[];

/** One line with its value; a value that does not exist in this call leaves its line out. */
export interface Step {
  readonly symbol: string;
  readonly name: string;
  readonly formula: string;
  readonly unit: StepUnit;
  readonly source: string;
  readonly value: number | Text | InputError;
}

type Values<R> = { readonly [K in Exclude<keyof R, "sources">]: number | Text | InputError | undefined };

/** Sources of single lines that depend on the input, by their keys. */
type Sources = { readonly sources?: Readonly<Record<string, string>> };

/** How a function's answer comes about: the lines for the docs, and the lines with values for one input. */
export interface Working<I> {
  readonly lines: StepLines<Record<string, unknown>>;
  readonly steps: (input: I) => readonly Step[];
}

/** Puts lines and the record of their values together. */
export const workingOf = <I, R extends Values<R>>(
  record: (input: I) => R & Sources,
  lines: StepLines<Omit<R, "sources">>,
): Working<I> => ({
  lines,
  steps: (input) => {
    const values = record(input);
    return lines.flatMap(([key, symbol, name, formula, unit, source]) => {
      const value = values[key as keyof R];
      return value === undefined
        ? []
        : [{ symbol, name, formula, unit, source: values.sources?.[key] ?? source, value }];
    });
  },
});
