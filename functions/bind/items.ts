import { InputError } from "../../src/errors";
import { CellError, isBlank, type Cell } from "../kinds/cell";
import type { Reading } from "../kinds/kind";
import type { Laid } from "./layout";
import { errorIn } from "../kinds/refusal";
import { words } from "../kinds/words";

/** Kinds of which a cell with 0 might have been meant as a number. */
const numeric: ReadonlySet<string> = new Set(["number", "length", "pitch", "blade", "offer"]);

const emptyText = ({ param: { kind, block } }: Laid): string => {
  if (block !== undefined) return "{parameter} is empty or 0, and the shop block does not give it";
  if (kind.name === "section")
    return '{parameter} is empty. A size without quotes, such as W12, is a cell\'s address: put it in quotes, "W12x50"';
  return kind.zeroIsValue || !numeric.has(kind.name) ? "{parameter} is empty" : "{parameter} is empty or 0";
};

/** Whether the cells of one item hold nothing; an error among them goes out. */
function isBlankItem(line: readonly Cell[], at: number, { param: { kind }, name }: Laid): boolean {
  let blank = true;
  for (let i = at; i < at + kind.width; i += 1) {
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
  const { width } = kind;
  return (row, column, reading) => {
    const line = cells[rows === 1 ? 0 : row]!;
    const at = columns === 1 ? 0 : column * width;
    const cell = line[at]!;
    // A number that is not 0 cannot be blank or an error: the usual case of a one-celled item.
    if (width === 1 && typeof cell === "number" && cell !== 0) return kind.read(line, at, reading, name);
    return isBlankItem(line, at, laid) ? notGiven(laid, reading) : kind.read(line, at, reading, name);
  };
}

/** A list may stand in a column or, where an item is one cell, in a row. */
const listLines = ({ cells, param }: Laid): readonly (readonly Cell[])[] =>
  cells === null ? [] : cells.length === 1 && param.kind.width === 1 ? cells[0]!.map((c) => [c]) : cells;
const isBlankLine = (line: readonly Cell[]): boolean => line.every((c) => isBlank(c, false));

/** The rows that the lists of a call share, without those blank in every one. */
export function keptRows(lists: readonly Laid[]): readonly number[] {
  const given = lists.filter((a) => a.cells !== null).map((a) => ({ name: a.name, lines: listLines(a) }));
  const [first] = given;
  if (first === undefined) return [];
  const count = first.lines.length;
  const other = given.find((a) => a.lines.length !== count);
  if (other !== undefined)
    throw new InputError(
      "invalid",
      other.name,
      `{parameter} has ${other.lines.length} rows, {other} ${count}: lists must be equally long`,
      { other: words(first.name) },
    );
  const rows = Array.from({ length: count }, (_, row) => row).filter(
    (row) => !given.every((a) => isBlankLine(a.lines[row]!)),
  );
  if (rows.length === 0) throw new InputError("invalid", first.name, "{parameter} is empty or 0");
  return rows;
}

/** Reads a whole range as one list. */
export function readList(laid: Laid, kept: readonly number[], reading: Reading): unknown {
  const { name, param, cells } = laid;
  if (cells === null) {
    if (param.missing === "refuse") throw new InputError("invalid", name, emptyText(laid));
    return param.missing.is;
  }
  const lines = listLines(laid);
  return kept.map((row) => {
    if (isBlankItem(lines[row]!, 0, laid))
      throw new InputError("invalid", name, `{parameter}: row ${row + 1} is empty or 0`);
    return param.kind.read(lines[row]!, 0, reading, name);
  });
}
