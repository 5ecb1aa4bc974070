import { call } from "../../functions/bind/call";
import type { Entry } from "../../functions/bind/entry";
import { Memo } from "../../functions/bind/memo";
import { parseCall } from "../../functions/bind/parseCall";
import { slots } from "../../functions/bind/slots";
import { catalogue } from "../../functions/catalogue";
import { CellError, type Cell, type Range } from "../../functions/kinds/cell";
import { random } from "../plan/fixture";

/** What fuzz and laws have in common: a seeded choice, and calls of the worksheet's functions by name. */
export interface Chance {
  /** A number from `low` to `high`. */
  readonly number: (low: number, high: number) => number;
  readonly whole: (low: number, high: number) => number;
  readonly of: <T>(items: readonly T[]) => T;
  readonly is: (share: number) => boolean;
}

export function chance(seed: number): Chance {
  const next = random(seed);
  const number = (low: number, high: number): number => low + (high - low) * next();
  const whole = (low: number, high: number): number => Math.floor(number(low, high + 1));
  return { number, whole, of: (items) => items[whole(0, items.length - 1)]!, is: (share) => next() < share };
}

export type Given = Cell | Range | undefined;
const rangeOf = (given: Given): Range | null =>
  given === undefined || given === null ? null : Array.isArray(given) ? (given as Range) : [[given as Cell]];

export const entryOf = (name: string): Entry => {
  const found = catalogue.find((e) => e.name === name);
  if (found === undefined) throw new Error(`no function ${name}`);
  return found;
};

const memo = new Memo();

/** A call by the names of its arguments; what is not named is left out. */
export function ask(name: string, given: Readonly<Record<string, Given>>): Cell[][] {
  const entry = entryOf(name);
  const places = slots(entry);
  const unknown = Object.keys(given).find((key) => !places.some((s) => s.name === key));
  if (unknown !== undefined) throw new Error(`${name} takes no ${unknown}`);
  return call(
    entry,
    places.map((s) => rangeOf(given[s.name])),
    memo,
  );
}

/** The one cell of an answer. */
export const cellOf = (cells: Cell[][]): Cell => cells[0]?.[0] ?? null;

/** Numbers of an answer, or undefined where it is refused. */
export function numbersOf(cells: Cell[][]): number[] | undefined {
  const flat = cells.flat();
  return flat.some((c) => c instanceof CellError) ? undefined : flat.filter((c) => typeof c === "number");
}

export const numberOf = (cells: Cell[][]): number | undefined => numbersOf(cells)?.[0];

/** Every example of every function, as its arguments. */
export const examples: readonly { readonly entry: Entry; readonly args: readonly (Range | null)[] }[] =
  catalogue.flatMap((entry) => entry.examples.map((formula) => ({ entry, args: parseCall(formula).args })));

export const relative = (a: number, b: number): number =>
  a === b ? 0 : Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b));
