import { InputError } from "../../src/errors";
import { isEmpty, type Range } from "../kinds/cell";
import type { Entry, Result } from "./entry";
import { words } from "../kinds/words";

/** What `show` asks for: columns by name, in order; or a card of them all, one result below the other. */
export interface Shown {
  readonly columns: readonly string[];
  readonly card: boolean;
}

type Row = Extract<Result, { readonly form: "row" }>;

const pick = (name: string, row: Row): readonly string[] => {
  const folded = name.trim().replace(/\s+/g, " ").toLowerCase();
  const names = Object.keys(row.columns);
  if (folded === "all") return names;
  const found = names.find((n) => words(n) === folded);
  if (found === undefined)
    throw new InputError("invalid", "show", '"{name}" is not a result; choose from {names}, all or card', {
      name: name.slice(0, 40),
      names: names.map(words).join(", "),
    });
  return [found];
};

/** Reads `show` once per call: one cell, or one row of cells holding names such as the sheet's own headings. */
export function readShow(entry: Entry, range: Range | null): Shown {
  const { result } = entry;
  if (result.form === "table") return { columns: Object.keys(result.columns), card: false };
  if (result.form === "cell") return { columns: [""], card: false };
  const cells = range === null || range.every((r) => r.every(isEmpty)) ? [] : (range[0] ?? []);
  if (range !== null && range.length > 1)
    throw new InputError("invalid", "show", "{parameter} takes one cell or one row of names");
  if (cells.length === 0) {
    if (result.main === undefined)
      throw new InputError("invalid", "show", "{parameter} is empty; choose from {names}, all or card", {
        names: Object.keys(result.columns).map(words).join(", "),
      });
    return { columns: [result.main], card: false };
  }
  const names = cells.map((c) => {
    if (typeof c !== "string" || isEmpty(c))
      throw new InputError(
        "invalid",
        "show",
        isEmpty(c) ? "{parameter} has an empty cell among its names" : "{parameter} is not text",
      );
    return c;
  });
  if (names.length === 1 && names[0]!.trim().toLowerCase() === "card")
    return { columns: Object.keys(result.columns), card: true };
  return { columns: names.flatMap((name) => pick(name, result)), card: false };
}
