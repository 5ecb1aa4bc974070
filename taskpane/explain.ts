import { call } from "../functions/bind";
import { catalogue } from "../functions/catalogue";
import { CellError, type Cell, type Range } from "../functions/cell";
import { parseCall } from "../functions/example";
import { Memo } from "../functions/memo";
import type { Selection, Sheet, Value } from "./sheet";

const isError = (value: Value): value is string => typeof value === "string" && /^#(?:N\/A|NUM!|VALUE!|DIV\/0!|REF!|NULL!)$/.test(value);

/** The arguments of a call, cut at its own commas: not at those in texts, array constants and inner calls. */
function cut(inner: string): readonly string[] {
  const parts = [""];
  let depth = 0;
  for (const piece of inner.match(/"(?:[^"]|"")*"|'(?:[^']|'')*'|[^"']/g) ?? []) {
    if (/^[({]$/.test(piece)) depth += 1;
    if (/^[)}]$/.test(piece)) depth -= 1;
    if (piece === "," && depth === 0) parts.push("");
    else parts.push(`${parts.pop() ?? ""}${piece}`);
  }
  return parts.map((part) => part.trim());
}

const isLiteral = (text: string): boolean => /^(?:"(?:[^"]|"")*"|[-+]?[\d.]+(?:e[-+]?\d+)?|\{[^()]*\}|TRUE|FALSE)$/i.test(text);
const isReference = (text: string): boolean => /^(?:(?:'(?:[^']|'')+'|[\w.]+)!)?(?:\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?|[A-Z_][\w.]{2,})$/i.test(text);

const fromSheet = (rows: readonly (readonly Value[])[]): Range => rows.map((row) => row.map((v): Cell => (v === "" ? null : isError(v) ? new CellError(v) : v)));

/**
 * Why the selected cell holds an error. Excel does not show the sentence everywhere, so the function is called again
 * here with the same cells. Empty for anything that is not an error of one of our functions.
 */
export async function explain({ formula, value }: Selection, sheet: Sheet): Promise<string> {
  const match = /^=SAW\.([A-Z]+)\((.*)\)$/s.exec(formula);
  const entry = catalogue.find((e) => e.name === match?.[1]);
  if (!isError(value) || match === null || entry === undefined) return "";
  const args = cut(match[2]!);
  const references = args.filter((a) => a !== "" && !isLiteral(a));
  if (!references.every(isReference)) return "an argument is a formula of its own; put that into a cell to see the reason here.";
  try {
    const values = await sheet.read(references);
    const given = args.map((a) => (a === "" ? null : isLiteral(a) ? parseCall(`${entry.name}(${a})`).args[0]! : fromSheet(values[references.indexOf(a)]!)));
    const [[first]] = call(entry, given, new Memo()) as [[Cell]];
    return first instanceof CellError ? first.text : "";
  } catch {
    return "";
  }
}
