import {
  ArrayValueObject,
  BaseFunction,
  BooleanValueObject,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
  type ErrorType,
} from "@univerjs/engine-formula";
import { tokensOf, type Token } from "../formula/tokens";

/**
 * What stands in quotes in a formula is a text, "3/4" too. The engine reads a text that looks like a date as that date's
 * number, in the arguments of its functions and in arrays, and it parts an array such as {"2/3, 3/4";"1-2"} at the commas
 * and semicolons inside the quotes as well.
 */

type Value = NumberValueObject | StringValueObject | BooleanValueObject | ErrorValueObject | NullValueObject;

/** One element: its tokens without spaces; nothing between two separators is an empty cell. */
function element(tokens: readonly Token[]): Value {
  const [first] = tokens;
  if (first === undefined) return NullValueObject.create();
  if (tokens.length === 1 && first.kind === "text")
    return StringValueObject.create(first.text.slice(1, -1).replace(/""/g, '"'));
  if (tokens.length === 1 && first.kind === "logical")
    return BooleanValueObject.create(first.text.toUpperCase() === "TRUE");
  if (tokens.length === 1 && first.kind === "error") return ErrorValueObject.create(first.text as ErrorType);
  const text = tokens.map((t) => t.text).join("");
  return Number.isFinite(Number(text)) ? NumberValueObject.create(Number(text)) : StringValueObject.create(text);
}

/** The elements by row, rows of one length. */
function elements(constant: string): Value[][] {
  const rows: Token[][][] = [[[]]];
  for (const token of tokensOf(constant.trim().slice(1, -1))) {
    const row = rows[rows.length - 1]!;
    if (token.kind === "separator") {
      if (token.text === ";") rows.push([[]]);
      else row.push([]);
    } else if (token.kind !== "space") row[row.length - 1]!.push(token);
  }
  const columns = Math.max(...rows.map((row) => row.length));
  return rows.map((row) => Array.from({ length: columns }, (_, c) => element(row[c] ?? [])));
}

interface Parted {
  _formatValue(this: Filled, raw: unknown): unknown;
}
interface Filled {
  _rowCount: number;
  _columnCount: number;
}

/** Makes the engine take every text in quotes as it is written. */
export function correctQuotedTexts(): void {
  BaseFunction.prototype.isArgumentsIgnoreNumberPattern = () => true;
  const array = ArrayValueObject.prototype as unknown as Parted;
  // Called on the array itself below, so unbound here.
  const own = Reflect.get<Parted, "_formatValue">(array, "_formatValue");
  array._formatValue = function format(raw) {
    if (typeof raw !== "string") return own.call(this, raw);
    const rows = elements(raw);
    [this._rowCount, this._columnCount] = [rows.length, rows[0]!.length];
    return rows;
  };
}
