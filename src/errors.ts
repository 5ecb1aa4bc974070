import type { Quantity } from "./quantities";

/** "invalid": an input is wrong (#VALUE!). "none": nothing was found, or no answer exists (#N/A). */
export type Reason = "invalid" | "none";

/** A number in the core's unit with the quantity it is, so that a sentence can be written in the caller's units. */
export interface Measured {
  readonly number: number;
  readonly quantity: Quantity;
  /** Significant digits in a sentence; 5 when left out. */
  readonly digits?: number;
}

export type Fact = Measured | string;

/** Makes an Error without Error's own constructor, which would capture a stack. */
function Stackless(): void {
  // Nothing to do: the fields are set below.
}
Stackless.prototype = Error.prototype;

/**
 * A refusal, as data. `problem` is a template: `{parameter}` stands for the argument's name, any other `{name}` for
 * the fact of that name. Without `{parameter}` the sentence begins with the argument's name and a colon; an empty
 * parameter means that the whole cut, and not one argument, is refused. functions/sentence.ts makes the sentence.
 * It has no stack: an answer may hold several that nobody looks at, and a captured stack costs more than the answer.
 */
export class InputError extends (Stackless as unknown as new () => Error) {
  constructor(
    readonly reason: Reason,
    readonly parameter: string,
    readonly problem: string,
    readonly facts: Readonly<Record<string, Fact>> = {},
  ) {
    super();
    this.name = "InputError";
    this.message = `${parameter}: ${problem}`;
  }
}

/** What is asked for, or its refusal as data. Anything else that is thrown is a bug and is left to surface. */
export function orRefusal<T>(ask: () => T): T | InputError {
  try {
    return ask();
  } catch (thrown) {
    if (thrown instanceof InputError) return thrown;
    throw thrown;
  }
}
