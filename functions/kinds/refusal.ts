import { InputError } from "../../src/errors";
import type { Units } from "../../src/quantities";
import { CellError } from "./cell";
import { sentence } from "./sentence";

/** An error that came in from the sheet and goes out as it is. */
export class PassedError extends Error {
  constructor(readonly cell: CellError) {
    super(cell.code);
    this.name = "PassedError";
  }
}

export type Refusal = InputError | PassedError;
export type Read<T = unknown> = { readonly value: T } | { readonly refusal: Refusal };

const passing = new Set(["#VALUE!", "#N/A", "#DIV/0!", "#NUM!", "#NULL!"]);

/** An incoming error: these five pass unchanged; any other is named in a sentence, because a host may not send it out. */
export const errorIn = (error: CellError, name: string): Refusal =>
  passing.has(error.code)
    ? new PassedError(new CellError(error.code))
    : new InputError("invalid", name, "{parameter} is {error}", { error: error.code });

export const isRefusal = (thrown: unknown): thrown is Refusal =>
  thrown instanceof InputError || thrown instanceof PassedError;

/** What `read` gives, or its refusal as data. Anything else that is thrown is a bug and is left to surface. */
export const attempt = <T>(read: () => T): Read<T> => {
  try {
    return { value: read() };
  } catch (thrown) {
    if (isRefusal(thrown)) return { refusal: thrown };
    throw thrown;
  }
};

/** A refusal as the cell shows it: #N/A where nothing was found, else #VALUE!, with the one sentence. */
export const refusalCell = (refusal: Refusal, units: Units): CellError =>
  refusal instanceof PassedError
    ? refusal.cell
    : new CellError(refusal.reason === "none" ? "#N/A" : "#VALUE!", sentence(refusal, units));
