import { InputError } from "../../src/errors";
import type { Units } from "../../src/quantities";
import { choice, text } from "../kinds";
import { CellError, isBlank, type Cell, type Range } from "../kinds/cell";
import { each, listByRow, optional, type Entry, type Param, type Takes } from "./entry";
import { slots, type Slot } from "./slots";
import { dropBlankRows, isBlankRow, lay, sizeOf, type Laid } from "./layout";
import type { Kept } from "../kinds/kind";
import { attempt, errorIn, isRefusal, refusalCell } from "../kinds/refusal";
import { cardCells, printers, tableCells } from "./results";
import { keptShopBlock, type ShopBlock } from "../shop/block";
import { itemRunner, type Call } from "./run";
import { readShow } from "./show";

export const mostCells = 100_000;

type Given = ReadonlyMap<string, Range | null>;

const unitsKind = choice("inch", "metric");
/** A saw for each item, or for each row of the lists. */
const sawParam = (saw: Takes["saw"]): Param<unknown> =>
  saw === "list" ? optional(listByRow(text, "")) : optional(each(text, ""));

const withoutError = (range: Range | null, name: string): Range | null => {
  for (const row of range ?? []) for (const cell of row) if (cell instanceof CellError) throw errorIn(cell, name);
  return range;
};

const readUnits = (range: Range | null, memo: Kept): Units | undefined => {
  if (range === null) return undefined;
  if (range.length > 1 || range[0]!.length > 1)
    throw new InputError("invalid", "units", "{parameter} takes one value, not a range");
  const cell = range[0]![0] ?? null;
  return isBlank(cell, false)
    ? undefined
    : unitsKind.read([cell], 0, { units: "inch", memo, shop: undefined }, "units");
};

const readSettings = (entry: Entry, range: Range | null, memo: Kept): ShopBlock | undefined => {
  if (range !== null && range.some((r) => r.some((c) => !isBlank(c, false)))) return keptShopBlock(range, memo);
  if (entry.takes.settings === "required")
    throw new InputError("invalid", "settings", "{parameter} is empty; point it at the shop block");
  return undefined;
};

function prepare(entry: Entry, given: Given, memo: Kept): Call {
  const range = (name: string): Range | null => withoutError(given.get(name) ?? null, name);
  const named = readUnits(range("units"), memo);
  const block = readSettings(entry, range("settings"), memo);
  const ofBlock = entry.takes.units === true ? block?.units : undefined;
  const units = named ?? ofBlock;
  return {
    entry,
    units: units ?? "inch",
    unitsAssumed: units === undefined,
    shown: readShow(entry, range("show")),
    block,
    memo,
  };
}

/** An inner row that is blank in every range gives empty text. */
const gapTest = (all: readonly Laid[]): ((row: number) => boolean) => {
  const ranges = all.filter((a) => a.rows > 1);
  return (row) => {
    for (const a of ranges) if (!isBlankRow(a, row)) return false;
    return ranges.length > 0;
  };
};

type Item = (row: number, column: number) => unknown;

/** The cells of one item. A refused one fills its whole width, so no array is jagged; a row that was printed in this call is not printed again. */
function itemPrinter({ entry: { result }, shown, units }: Call, item: Item): (row: number, column: number) => Cell[] {
  const print = printers(result, shown.columns, units);
  const [only] = print;
  const printed = new Map<unknown, readonly Cell[]>();
  return (row, column) => {
    try {
      const value = item(row, column);
      if (print.length === 1) return [only!(value)];
      let cells = printed.get(value);
      if (cells === undefined) printed.set(value, (cells = print.map((one) => one(value))));
      return [...cells];
    } catch (thrown) {
      if (!isRefusal(thrown)) throw thrown;
      const cell = refusalCell(thrown, units);
      return print.map(() => cell);
    }
  };
}

/** The rows of results. */
function fillRows(
  call: Call,
  all: readonly Laid[],
  size: { readonly rows: number; readonly columns: number },
  item: Item,
): Cell[][] {
  const cellsOf = itemPrinter(call, item);
  const isGap = gapTest(all);
  const gap = Array.from({ length: size.columns * call.shown.columns.length }, () => "");
  // As long as it will be: an array that grows is copied again and again.
  const rows = new Array<Cell[]>(size.rows);
  for (let row = 0; row < size.rows; row += 1) {
    if (isGap(row)) rows[row] = [...gap];
    else if (size.columns === 1) rows[row] = cellsOf(row, 0);
    else rows[row] = Array.from({ length: size.columns }, (_, column) => cellsOf(row, column)).flat();
  }
  return rows;
}

/** A card and a table are of one item. */
const refuseSeveral = (what: string | undefined, items: number): void => {
  if (what === undefined || items === 1) return;
  const parameter = what === "a card" ? "show" : "";
  throw new InputError("invalid", parameter, "{what} is for one item; here are {items}", {
    what,
    items: String(items),
  });
};

function run(call: Call, places: readonly Slot[], given: Given): Cell[][] {
  const {
    entry: { result, takes },
    shown,
    units,
  } = call;
  const params = places.flatMap((s) => (s.role === "param" ? [lay(s.name, s.param, given.get(s.name) ?? null)] : []));
  const sawCells = given.get("saw") ?? null;
  const all = dropBlankRows(
    takes.saw !== undefined && sawCells !== null ? [...params, lay("saw", sawParam(takes.saw), sawCells)] : params,
  );
  const size = sizeOf(all, shown.card || shown.columns.length > 1);
  const cells = size.rows * size.columns * shown.columns.length;
  if (cells > mostCells)
    throw new InputError(
      "invalid",
      "",
      `this call would fill ${cells} cells; at most ${mostCells} are filled: use a smaller range`,
    );
  refuseSeveral(shown.card ? "a card" : result.form === "table" ? "this table" : undefined, size.rows * size.columns);
  const item = itemRunner(call, all.slice(0, params.length), all[params.length]);
  if (result.form === "table")
    return tableCells(
      result,
      attempt(() => item(0, 0)),
      units,
    );
  if (result.form === "row" && shown.card)
    return cardCells(
      result,
      attempt(() => item(0, 0)),
      units,
    );
  return fillRows(call, all, size, item);
}

/** The units that a call is answered in: its own, else its shop block's, else inch. */
export function unitsOfCall(entry: Entry, args: readonly (Range | null)[], memo: Kept): Units {
  const given = new Map(slots(entry).map((s, i) => [s.name, args[i] ?? null]));
  const ready = attempt(() => prepare(entry, given, memo));
  return "value" in ready ? ready.value.units : "inch";
}

/**
 * One worksheet call. `args` are the ranges in the worksheet's order, null where left out. Every host calls this, and
 * nothing but an error of our own is ever thrown out of it.
 */
export function call(entry: Entry, args: readonly (Range | null)[], memo: Kept): Cell[][] {
  if (entry.answer !== undefined) return entry.answer(args, memo);
  const places = slots(entry);
  const given = new Map(places.map((s, i) => [s.name, args[i] ?? null]));
  const ready = attempt(() => prepare(entry, given, memo));
  if ("refusal" in ready) return [[refusalCell(ready.refusal, "inch")]];
  const done = attempt(() => run(ready.value, places, given));
  return "refusal" in done ? [[refusalCell(done.refusal, ready.value.units)]] : done.value;
}
