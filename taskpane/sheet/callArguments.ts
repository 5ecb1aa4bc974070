import { CellError, type Cell, type Range } from "../../functions/kinds/cell";
import { parseCall } from "../../functions/bind/parseCall";
import { areaOf } from "../../functions/formula/cellAddress";
import { isError } from "../../functions/formula/cellErrors";
import { tokensOf } from "../../functions/formula/tokens";
import { onSheet } from "./address";
import type { Call } from "./callsIn";
import type { Sheet, Value } from "./sheet";

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

/** What the arguments of a call hold now; undefined where one is a formula of its own, or nothing that is read here. */
export async function callArguments(
  { name, args }: Call,
  on: string,
  sheet: Sheet,
): Promise<(Range | null)[] | undefined> {
  const references = args.filter((a) => a !== "" && !isLiteral(a));
  if (!references.every(isReference)) return undefined;
  const values = references.length === 0 ? [] : await sheet.read(references.map((r) => onSheet(r, on)));
  return args.map((a) =>
    a === "" ? null : isLiteral(a) ? parseCall(`${name}(${a})`).args[0]! : fromSheet(values[references.indexOf(a)]!),
  );
}
