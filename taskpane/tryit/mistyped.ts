import { tokensOf } from "../../functions/formula/tokens";
import { catalogue } from "../../functions/catalogue";
import { knows } from "../../functions/workbook/engine";
import { nearestWord } from "../../src/size/nearestWord";

/** What people type wrongly in a formula, in one sentence; empty where nothing of the kind is seen. */

const own = catalogue.map((e) => e.name);
const native = [
  "SUM",
  "AVERAGE",
  "COUNT",
  "COUNTA",
  "MIN",
  "MAX",
  "ROUND",
  "ROUNDUP",
  "IF",
  "IFERROR",
  "SUMIF",
  "SUMIFS",
  "SUMPRODUCT",
  "XLOOKUP",
  "VLOOKUP",
  "INDEX",
  "MATCH",
];

function unknown(name: string): string {
  const bare = name.toUpperCase().replace(/^SAW[._ ]?/, "");
  if (own.includes(bare)) return `${name} is written SAW.${bare}.`;
  const near = nearestWord(
    bare.toLowerCase(),
    own.map((n) => n.toLowerCase()),
  )?.toUpperCase();
  if (near !== undefined) return `There is no function ${name}; did you mean SAW.${near}?`;
  const other = nearestWord(
    name.toLowerCase(),
    native.map((n) => n.toLowerCase()),
  )?.toUpperCase();
  return `There is no function ${name}${other === undefined ? "" : `; did you mean ${other}?`}${other === undefined ? ". The pane's tab Functions lists Kerfsheet's." : ""}`;
}

export function mistyped(formula: string): string {
  const tokens = tokensOf(formula.replace(/^=/, ""));
  const strange = tokens.find((t) => t.kind === "function" && !knows(t.text.toUpperCase()));
  if (strange !== undefined) return unknown(strange.text);
  let depth = 0;
  for (const { kind, text } of tokens) {
    if (text === "{") depth += 1;
    if (text === "}") depth -= 1;
    if (kind === "separator" && text === ";" && depth === 0)
      return "Arguments are parted by a comma here, not by a semicolon.";
  }
  const closed = tokens.filter((t) => t.text === ")").length;
  const open = tokens.filter((t) => t.text === "(").length;
  if (open !== closed)
    return open > closed ? "A closing parenthesis is missing." : "There is one closing parenthesis too many.";
  return tokens.some((t) => t.kind === "unknown" && t.text.startsWith('"'))
    ? "A quotation mark is missing: a text stands between two of them."
    : "";
}
