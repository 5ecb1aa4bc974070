import { bladeClass, material, pitch, section } from "../../functions/kinds";
import type { Kind } from "../../functions/kinds/kind";
import { Memo } from "../../functions/bind/memo";
import { attempt } from "../../functions/kinds/refusal";
import type { Units } from "../../src/quantities";
import type { Selection, Value } from "./sheet";

/** What people write above a column that feeds an argument. */
const headings: readonly (readonly [argument: string, names: readonly string[]])[] = [
  ["section", ["section", "size", "profile", "dimension", "dimensions"]],
  ["material", ["material", "grade", "alloy", "steel"]],
  ["blade", ["blade", "band", "blade class"]],
  ["pitch", ["pitch", "tpi", "teeth per inch"]],
  ["rate", ["rate", "removal rate"]],
  ["quantity", ["quantity", "qty", "pieces", "pcs"]],
  ["length", ["length", "cut length"]],
  ["minutes", ["minutes", "min", "minutes per cut", "min per cut"]],
  ["hours", ["hours", "hrs"]],
  ["bandSpeed", ["band speed", "speed"]],
];

const kinds: readonly (readonly [string, Kind<unknown>])[] = [
  ["section", section],
  ["blade", bladeClass],
  ["pitch", pitch],
  ["material", material],
];

const argumentOf = (heading: Value): string | undefined => {
  const text = typeof heading === "string" ? heading.trim().toLowerCase() : "";
  const best = (exact: boolean): string | undefined =>
    headings.find(([, names]) => names.some((n) => (exact ? text === n : text.startsWith(`${n} `))))?.[0];
  return text === "" ? undefined : (best(true) ?? best(false));
};

/** What a cell would be read as, by the functions' own readers; numbers are told apart by their heading only. */
const kindOf = (value: Value, units: Units, memo: Memo): string | undefined => {
  if (typeof value !== "string" || value.trim() === "") return undefined;
  return kinds.find(
    ([name, kind]) => "value" in attempt(() => kind.read([value], 0, { units, memo, shop: undefined }, name)),
  )?.[0];
};

/** The nearest row above that names two of the arguments at least. */
const headingRow = (values: readonly (readonly Value[])[]): readonly Value[] => {
  for (let r = values.length - 2; r >= 0; r -= 1)
    if (
      new Set(values[r]!.map(argumentOf)).size >= 3 ||
      values[r]!.filter((v) => argumentOf(v) !== undefined).length >= 2
    )
      return values[r]!;
  return [];
};

/** Which column of the selected row holds which argument: by what the cell reads as, else by the heading above it. */
export function rowColumns({ around, column }: Selection, units: Units): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  const memo = new Memo();
  const selected = around.values[around.values.length - 1] ?? [];
  const take = (name: string | undefined, at: number): void => {
    if (name !== undefined && !found.has(name) && at !== column && selected[at] !== "") found.set(name, at);
  };
  headingRow(around.values).forEach((heading, at) => {
    take(argumentOf(heading), at);
  });
  selected.forEach((value, at) => {
    take(kindOf(value, units, memo), at);
  });
  return found;
}
