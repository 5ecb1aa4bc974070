import { cellErrors } from "./cellErrors";

/**
 * The text of a formula cut into its tokens (ECMA-376-1, 18.17.2). Whoever looks for something in a formula looks through
 * these, so that what counts as text, as a sheet's name or as a call is decided here and nowhere else.
 */

export type TokenKind =
  /** "a ""b""" */
  | "text"
  | "error"
  /** What names the sheet, or the other workbook, of the token after it: Sheet1!  'Bill''s list'!  [1]Prices!  [1]! */
  | "sheet"
  /** A cell, what spills from it, an area, whole columns or rows: $A$1  A7#  A1:B2  A:A  3:3 */
  | "reference"
  /** Cells of a table, with or without its name: Lines[[#This Row],[cut minutes]]  [@size] */
  | "table"
  | "number"
  | "logical"
  /** A name with a parenthesis after it, which is a token of its own. */
  | "function"
  | "name"
  /** ( and { */
  | "open"
  /** ) and } */
  | "close"
  | "separator"
  | "operator"
  /** Between two references it means their intersection. */
  | "space"
  /** No formula has it. A quote or a bracket that never closes takes the rest. */
  | "unknown";

export interface Token {
  readonly kind: TokenKind;
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

const letters = "\\p{L}\\p{M}\\p{N}_.\\\\?";
const word = `[\\p{L}_\\\\][${letters}]*`;
const sheet = `[${letters}]+`;
/** Nothing follows that would make the token another one. */
const ends = `(?![${letters}$!(\\[])`;

/** A sheet has columns to XFD and rows to 1048576; what lies beyond is a name. */
const column = "\\$?(?:[A-Za-z]{1,2}|[A-Wa-w][A-Za-z]{2}|[Xx][A-Ea-e][A-Za-z]|[Xx][Ff][A-Da-d])";
const row = "\\$?(?:1048(?:57[0-6]|5[0-6]\\d|[0-4]\\d\\d)|104[0-7]\\d{3}|10[0-3]\\d{4}|[1-9]\\d{0,5})(?!\\d)";
const cell = `${column}${row}`;

/** Inside a bracket ' keeps the sign after it from being one of the grammar's. */
const plain = "'[^]|[^\\[\\]']";
const bracket = `\\[(?:${plain}|\\[(?:${plain})*\\])*\\]`;
const book = "\\[[^\\[\\]]*\\]";
const quoted = "'[^']*(?:''[^']*)*'";

const anyCase = (text: string): string => Array.from(text, (l) => `[${l}${l.toLowerCase()}]`).join("");
const literally = (text: string): string => text.replace(/[/?]/g, "\\$&");

/** Tried in this order at every place. */
const rules: readonly (readonly [kind: TokenKind, pattern: string])[] = [
  ["space", "\\s+"],
  ["text", '"[^"]*(?:""[^"]*)*"'],
  ["error", cellErrors.map(literally).join("|")],
  ["sheet", `${quoted}!|(?:${book})?(?:(?!${cell}:)${sheet}:)?${sheet}!|${book}!`],
  ["reference", `(?:${cell}:${cell}|${column}:${column}|${row}:${row})${ends}|${cell}(?:#|${ends})`],
  ["table", `(?:${word})?${bracket}`],
  ["number", `(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][-+]?\\d+)?${ends}`],
  ["logical", `(?:${anyCase("TRUE")}|${anyCase("FALSE")})${ends}`],
  ["function", `${word}(?=\\s*\\()`],
  ["name", word],
  ["open", "[({]"],
  ["close", "[)}]"],
  ["separator", "[,;]"],
  ["operator", "<=|>=|<>|[-+*/^&=<>%@:#]"],
  ["unknown", `${quoted}|["'\\[][^]*|[${letters}]+|[^]`],
];

const any = new RegExp(rules.map(([, pattern]) => `(${pattern})`).join("|"), "uy");

/** The tokens of a formula, with or without its "="; one after the other they are its text again. */
export function tokensOf(formula: string): readonly Token[] {
  const tokens: Token[] = [];
  any.lastIndex = 0;
  for (let match = any.exec(formula); match !== null; match = any.exec(formula)) {
    const [text] = match;
    const kind = rules[match.findIndex((group, i) => i > 0 && group !== undefined) - 1]![0];
    tokens.push({ kind, text, start: match.index, end: match.index + text.length });
  }
  return tokens;
}

const inner = new RegExp(`\\[((?:${plain})*)\\]`, "gu");

/** The words in the brackets of a table's cells, #This Row or cut minutes, and whether "@" stands before them. */
export function tableWords({ text }: Token): { readonly here: boolean; readonly words: readonly string[] } {
  const inside = text.slice(text.indexOf("[") + 1, -1);
  const here = inside.startsWith("@");
  const bracketed = Array.from(inside.matchAll(inner), ([, item]) => item!);
  const bare = inside.slice(Number(here)).trim();
  return { here, words: bracketed.length > 0 ? bracketed : bare === "" ? [] : [bare] };
}

/** The name of a sheet as it is, of the token that names it. */
export const sheetNamed = ({ text }: Token): string =>
  text.startsWith("'") ? text.slice(1, -2).replace(/''/g, "'") : text.slice(0, -1);

/** The formula with some of its tokens written in another way. */
export const rewritten = (
  formula: string,
  change: (token: Token, i: number, all: readonly Token[]) => string,
): string => tokensOf(formula).map(change).join("");
