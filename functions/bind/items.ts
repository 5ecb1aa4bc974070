import { InputError } from "../../src/errors";
import { CellError, isBlank, type Cell } from "../kinds/cell";
import type { Reading } from "../kinds/kind";
import type { Laid } from "./layout";
import { errorIn } from "../kinds/refusal";

/** Kinds of which a cell with 0 might have been meant as a number. */
const numeric: ReadonlySet<string> = new Set(["number", "length", "pitch", "blade", "offer"]);

export const emptyText = ({ param: { kind, block } }: Laid): string => {
  if (block !== undefined) return "{parameter} is empty or 0, and the shop block does not give it";
  if (kind.name === "section")
    return '{parameter} is empty. A size without quotes, such as W12, is a cell\'s address: put it in quotes, "W12x50"';
  return kind.zeroIsValue || !numeric.has(kind.name) ? "{parameter} is empty" : "{parameter} is empty or 0";
};

/** Whether the cells of one item hold nothing; an error among them goes out. */
export function isBlankItem(line: readonly Cell[], at: number, { param: { kind }, name }: Laid): boolean {
  let blank = true;
  const end = kind.width === "row" ? line.length : at + kind.width;
  for (let i = at; i < end; i += 1) {
    const cell = line[i]!;
    if (cell instanceof CellError) throw errorIn(cell, name);
    if (!isBlank(cell, kind.zeroIsValue)) blank = false;
  }
  return blank;
}

/** What holds when an argument is not given: the shop block's value, else the default, else a refusal. */
function notGiven(laid: Laid, reading: Reading): unknown {
  const { block, missing } = laid.param;
  const fed = block === undefined ? undefined : reading.shop?.[block];
  if (fed !== undefined) return fed;
  if (missing === "refuse") throw new InputError("invalid", laid.name, emptyText(laid));
  return missing.is;
}

export type Reader = (row: number, column: number, reading: Reading) => unknown;

/** Reads the items of one argument. Made once per call, so that the loop over a hundred thousand rows does little else. */
export function itemReader(laid: Laid): Reader {
  const {
    name,
    param: { kind },
    cells,
    rows,
    columns,
  } = laid;
  if (cells === null) return (_, __, reading) => notGiven(laid, reading);
  const width = Number(kind.width);
  return (row, column, reading) => {
    const line = cells[rows === 1 ? 0 : row]!;
    const at = columns === 1 ? 0 : column * width;
    const cell = line[at]!;
    // A number that is not 0 cannot be blank or an error: the usual case of a one-celled item.
    if (width === 1 && typeof cell === "number" && cell !== 0) return kind.read(line, at, reading, name);
    return isBlankItem(line, at, laid) ? notGiven(laid, reading) : kind.read(line, at, reading, name);
  };
}
