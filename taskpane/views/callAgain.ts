import { call } from "../../functions/bind/call";
import type { Entry } from "../../functions/bind/entry";
import { Memo } from "../../functions/bind/memo";
import { parseCall } from "../../functions/bind/parseCall";
import { catalogue } from "../../functions/catalogue";
import { areaOf } from "../../functions/formula/cellAddress";
import { isError } from "../../functions/formula/cellErrors";
import { tokensOf } from "../../functions/formula/tokens";
import { CellError, type Cell, type Range } from "../../functions/kinds/cell";
import { onSheet } from "../sheet/address";
import type { Call } from "../sheet/callsIn";
import type { Sheet, Value } from "../sheet/sheet";

/** A text, a number with its sign, TRUE or FALSE, or an array constant of these. */
function isLiteral(text: string): boolean {
  const tokens = tokensOf(text);
  const first = tokens[0]!;
  if (first.text === "{")
    return tokens[tokens.length - 1]!.text === "}" && !tokens.some((t) => t.kind === "reference" || t.text === "(");
  const [one = first, ...more] = first.text === "-" || first.text === "+" ? tokens.slice(1) : tokens;
  return more.length === 0 && (one.kind === "number" || (one === first && ["text", "logical"].includes(one.kind)));
}

/** Cells or a name, with their sheet or without; not whole columns, and nothing of another workbook. */
function isReference(text: string): boolean {
  const tokens = tokensOf(text);
  const [one, ...more] = tokens[0]?.kind === "sheet" && !tokens[0].text.includes("[") ? tokens.slice(1) : tokens;
  return more.length === 0 && (one?.kind === "name" || (one?.kind === "reference" && areaOf(one.text) !== undefined));
}

const fromSheet = (rows: readonly (readonly Value[])[]): Range =>
  rows.map((row) => row.map((v): Cell => (v === "" ? null : isError(v) ? new CellError(v) : v)));

/** Calls the function again with the same cells, or another entry with its arguments; undefined where an argument is none. */
export async function callAgain(
  { name, args }: Call,
  on: string,
  sheet: Sheet,
  entry: Entry = catalogue.find((e) => e.name === name)!,
): Promise<Cell[][] | undefined> {
  const references = args.filter((a) => a !== "" && !isLiteral(a));
  if (!references.every(isReference)) return undefined;
  const values = references.length === 0 ? [] : await sheet.read(references.map((r) => onSheet(r, on)));
  const given = args.map((a) =>
    a === "" ? null : isLiteral(a) ? parseCall(`${name}(${a})`).args[0]! : fromSheet(values[references.indexOf(a)]!),
  );
  return call(entry, given, new Memo());
}
