import { InputError } from "../../src/errors";
import { isBlank, type Cell } from "../kinds/cell";
import type { Reading } from "../kinds/kind";
import { attempt } from "../kinds/refusal";
import { words } from "../kinds/words";
import { emptyText, isBlankItem } from "./items";
import type { Laid } from "./layout";

/** A list may stand in a column or, where an item is one cell, in a row. */
const linesOf = ({ cells, param }: Laid): readonly (readonly Cell[])[] =>
  cells === null ? [] : cells.length === 1 && param.kind.width === 1 ? cells[0]!.map((c) => [c]) : cells;
const isBlankLine = (line: readonly Cell[]): boolean => line.every((c) => isBlank(c, false));

/** The rows that are read of one group: none where every list of it is blank. */
function groupRows(lists: readonly Laid[]): readonly number[] {
  const given = lists.map((a) => ({ name: a.name, lines: linesOf(a) })).filter((a) => a.lines.length > 0);
  const long = given.filter((a) => a.lines.length > 1);
  const [first] = long.length > 0 ? long : given;
  if (first === undefined) return [];
  const count = first.lines.length;
  const other = long.find((a) => a.lines.length !== count);
  if (other !== undefined)
    throw new InputError(
      "invalid",
      other.name,
      `{parameter} has ${other.lines.length} rows, {other} ${count}: lists must be equally long, or one cell for all rows`,
      { other: words(first.name) },
    );
  const shown = long.length > 0 ? long : given;
  const isKept = (row: number): boolean => shown.some((a) => !isBlankLine(a.lines[row]!));
  const rows = Array.from({ length: count }, (_, row) => row);
  const end = rows.reduce((last, row) => (isKept(row) ? row + 1 : last), 0);
  return lists.some((a) => a.param.list!.byRow) ? rows.slice(0, end) : rows.filter(isKept);
}

/** The rows of every group of lists of a call. */
export function keptRows(lists: readonly Laid[]): ReadonlyMap<string, readonly number[]> {
  const groups = new Map<string, Laid[]>();
  for (const a of lists) groups.set(a.param.list!.group, [...(groups.get(a.param.list!.group) ?? []), a]);
  return new Map([...groups].map(([name, members]) => [name, groupRows(members)]));
}

/** What `read` gives, or its refusal as the value. */
export function givenRefusal(read: () => unknown, name: string): unknown {
  const done = attempt(read);
  if ("value" in done) return done.value;
  const { refusal } = done;
  if (refusal instanceof InputError) return refusal;
  return new InputError("invalid", name, "{parameter} is {error}", { error: refusal.cell.code });
}

/** Reads a whole range as one list; one cell holds for all rows of its group. */
export function readList(laid: Laid, kept: ReadonlyMap<string, readonly number[]>, reading: Reading): unknown {
  const { name, param, cells } = laid;
  const { group, holes, byRow } = param.list!;
  const rows = kept.get(group) ?? [];
  // A log that is still empty is a log.
  if (byRow && cells !== null && rows.length === 0) return [];
  if (cells === null || rows.length === 0) {
    if (param.missing === "refuse") throw new InputError("invalid", name, emptyText(laid));
    return param.missing.is;
  }
  const lines = linesOf(laid);
  if (param.missing !== "refuse" && lines.every(isBlankLine)) return param.missing.is;
  const read = (row: number): unknown => {
    const line = lines[lines.length === 1 ? 0 : row]!;
    if (!isBlankItem(line, 0, laid)) return param.kind.read(line, 0, reading, name);
    if (holes) return undefined;
    throw new InputError("invalid", name, `{parameter}: row ${row + 1} is empty or 0`);
  };
  return rows.map(byRow ? (row) => givenRefusal(() => read(row), name) : read);
}
