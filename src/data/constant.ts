/**
 * A constant with the mark of its basis: "read" in the named source; "memory" of a source that was not read again;
 * "common practice" without a source; "derived" from the formulas; "judgement", chosen so that the model behaves, fitted
 * to nothing. The marks stand in docs/sources.md and on the card.
 */
export type Mark = "read" | "memory" | "common practice" | "derived" | "judgement";

export interface Constant {
  readonly value: number;
  readonly unit: string;
  readonly mark: Mark;
  readonly basis: string;
}

export const constant = (value: number, unit: string, mark: Mark, basis: string): Constant => ({
  value,
  unit,
  mark,
  basis,
});
