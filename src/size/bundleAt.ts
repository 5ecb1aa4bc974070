import { InputError } from "../errors";
import type { Modifier } from "./modifier";
import type { Token } from "./sizeTokens";

type Bundle = Extract<Modifier, { readonly kind: "bundle" }>;

const stackWords: ReadonlySet<string> = new Set(["bundle", "bundled", "stack", "stacked"]);
const highWords: ReadonlySet<string> = new Set(["high", "rows", "row"]);
const wideWords: ReadonlySet<string> = new Set(["wide", "columns", "column"]);
const countWords: ReadonlySet<string> = new Set(["pcs", "pc", "pieces", "piece", "off"]);

/**
 * The bundle that begins at a token: bundle 3x4, 3x4 bundle of, 3x4 of, 2 high 3 wide, 5 wide, stack of 4, 4 pcs.
 * @param tokens of a size [-]
 * @param i which token [-]
 * @returns rows and columns [-], or undefined
 * @throws InputError "invalid": without its numbers, not whole, under 1 or over 100
 * @source common practice, no source; the limit is judgement
 */
export function bundleAt(tokens: readonly Token[], i: number): Bundle | undefined {
  const token = tokens[i]!;
  if (isWord(token, stackWords)) return afterWord(tokens, i);
  if (!isCount(token)) return undefined;
  const word = tokens[i + 1];
  if (isWord(word, countWords))
    return { ...bundle(1, token.value, tokens[i + 2]?.text === "of" ? 3 : 2), counted: true };
  if (isWord(word, highWords))
    return highAndWide(tokens, i, wideWords, (rows, columns, length) => bundle(rows, columns, length));
  if (isWord(word, wideWords))
    return highAndWide(tokens, i, highWords, (columns, rows, length) => bundle(rows, columns, length));
  return i === 0 && word?.kind === "x" ? inFront(tokens) : undefined;
}

/** 3x4 of, 3x4 bundle of, 3x4 bundle. */
function inFront([rows, , columns, word, of]: readonly Token[]): Bundle | undefined {
  if (!isCount(rows) || !isCount(columns)) return undefined;
  if (word?.text === "of") return bundle(rows.value, columns.value, 4);
  return isWord(word, stackWords) ? bundle(rows.value, columns.value, of?.text === "of" ? 5 : 4) : undefined;
}

function isWord(token: Token | undefined, set: ReadonlySet<string>): boolean {
  return token?.kind === "word" && set.has(token.text);
}

function isCount(token: Token | undefined): token is Token {
  return token?.kind === "number" && token.unit === "" && !token.fraction;
}

function form(): InputError {
  return new InputError(
    "invalid",
    "section",
    'a bundle is written "bundle rows x columns", for example "round 2 bundle 3x4"',
  );
}

function bundle(rows: number, columns: number, length: number): Bundle {
  if (rows < 1 || columns < 1) throw new InputError("invalid", "section", "a bundle needs at least 1 row and 1 column");
  if (!Number.isInteger(rows) || !Number.isInteger(columns)) throw form();
  if (rows > 100 || columns > 100) {
    throw new InputError("invalid", "section", "a bundle of {rows} x {columns} has more than 100 rows or columns", {
      rows: String(rows),
      columns: String(columns),
    });
  }
  return { kind: "bundle", rows, columns, counted: false, length };
}

function afterWord(tokens: readonly Token[], i: number): Bundle {
  const skip = tokens[i + 1]?.text === "of" ? 2 : 1;
  const [rows, x, columns] = tokens.slice(i + skip, i + skip + 3);
  if (!isCount(rows)) throw form();
  if (x?.kind === "x" && isCount(columns)) return bundle(rows.value, columns.value, skip + 3);
  if (x?.kind === "x" || tokens[i]!.text.startsWith("bundle")) throw form();
  return bundle(rows.value, 1, skip + 1);
}

/** 2 high 3 wide, 3 wide x 2 high, 5 wide, 4 high. */
function highAndWide(
  tokens: readonly Token[],
  i: number,
  others: ReadonlySet<string>,
  make: (first: number, second: number, length: number) => Bundle,
): Bundle {
  const skip = tokens[i + 2]?.kind === "x" ? 3 : 2;
  const [other, word] = tokens.slice(i + skip, i + skip + 2);
  const first = tokens[i]!.value;
  return isCount(other) && isWord(word, others) ? make(first, other.value, skip + 2) : make(first, 1, 2);
}
