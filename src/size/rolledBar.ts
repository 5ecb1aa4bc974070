import { rolledNames } from "../data/sectionWords";
import { InputError } from "../errors";
import type { Bar } from "./bar";
import { nearestRows } from "./nearestRows";
import { rolledRow } from "./rolledRow";
import { rolledShape } from "./rolledShape";
import type { Token } from "./sizeTokens";

const american: ReadonlySet<string> = new Set(["W", "S", "M", "HP", "C", "MC", "WT"]);
/** Numbers that a designation has: 12x50; 200; 305x165x40. */
const counts: ReadonlyMap<string, readonly number[]> = new Map([
  ["IPE", [1, 2]],
  ["HE", [2]],
  ["UB", [3]],
  ["UC", [3]],
  ["PFC", [3]],
]);

/**
 * A rolled shape from its designation, American in inches and pounds per foot or in millimetres and kilograms per metre.
 * @param word that names the family [text]
 * @param numbers of the designation [-]
 * @returns the bar with its published area [-]
 * @throws InputError "invalid": a number is missing; "none": not in the tables, with the nearest designations
 * @source ASTM A6/A6M, EN 10365
 */
export function rolledBar(word: string, numbers: readonly Token[]): Bar {
  const name = rolledNames.get(word)!;
  const values = numbers.map(({ value }) => value);
  const key = values.join("x");
  if (name === "HE" && values.length === 1)
    throw new InputError("invalid", "section", "HE {key}: which series, HEA, HEB or HEM?", { key });
  checkCount(name, word, values);
  const row = rolledRow(name, key);
  const printed = american.has(name) ? `${name}${key}` : `${name} ${key}`;
  if (row === undefined)
    throw new InputError("none", "section", "{printed} is not in the tables; nearest: {nearest}", {
      printed,
      nearest: nearest(name, values),
    });
  const { shape, area } = rolledShape(row);
  return { text: printName(name, row.key), notes: [], shape, ...(area === undefined ? {} : { area }) };
}

function printName(name: string, key: string): string {
  return american.has(name) ? `${name}${key.toUpperCase()}` : `${name} ${key}`;
}

function nearest(name: string, values: readonly number[]): string {
  return nearestRows(name, values)
    .map((key) => printName(name, key))
    .join(", ");
}

function checkCount(name: string, word: string, values: readonly number[]): void {
  const wanted = counts.get(name) ?? [american.has(name) ? 2 : 1];
  if (wanted.includes(values.length)) return;
  const facts = { name, word, key: values.join("x"), nearest: nearest(name, values) };
  if (values.length === 0)
    throw new InputError(
      "invalid",
      "section",
      '"{word}" has no numbers; write the whole designation, for example {nearest}',
      facts,
    );
  if (values.length > wanted[0]!) {
    throw new InputError(
      "invalid",
      "section",
      "{name}{key} has too many numbers; nearest: {nearest}. The cut length does not belong in the size",
      facts,
    );
  }
  if (american.has(name))
    throw new InputError(
      "invalid",
      "section",
      "{name}{key} needs the weight too, for example W12x50; nearest: {nearest}",
      facts,
    );
  throw new InputError("invalid", "section", "{name} {key} is not a whole designation; nearest: {nearest}", facts);
}
