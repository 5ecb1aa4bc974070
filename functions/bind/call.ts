import { InputError } from "../../src/errors";
import type { Units } from "../../src/quantities";
import { defaultShop } from "../../src/shop/defaultShop";
import type { Shop } from "../../src/shop/shop";
import { choice, text } from "../kinds";
import { CellError, isBlank, type Cell, type Range } from "../kinds/cell";
import { type Entry, type Param } from "./entry";
import { slots, type Slot } from "./slots";
import { itemReader, keptRows, readList, type Reader } from "./items";
import { dropBlankRows, isBlankRow, lay, sizeOf, type Laid } from "./layout";
import type { Memo } from "./memo";
import { attempt, errorIn, isRefusal, refusalCell, type Read } from "../kinds/refusal";
import { cardCells, printers, tableCells, type Printer } from "./results";
import { pickSaw, readShopBlock, type ShopBlock } from "../shop/block";
import { readShow, type Shown } from "./show";

export const mostCells = 100_000;

/** What holds for the whole call, before the first item is read. */
interface Call {
  readonly entry: Entry;
  readonly units: Units;
  readonly shown: Shown;
  readonly block: ShopBlock | undefined;
  readonly memo: Memo;
}

type Given = ReadonlyMap<string, Range | null>;

const unitsKind = choice("inch", "metric");
const sawParam: Param<unknown> = {
  kind: text,
  varies: true,
  list: false,
  help: "",
  missing: { is: undefined },
  block: undefined,
};

const withoutError = (range: Range | null, name: string): Range | null => {
  const error = range?.flat().find((c): c is CellError => c instanceof CellError);
  if (error !== undefined) throw errorIn(error, name);
  return range;
};

const readUnits = (range: Range | null, memo: Memo): Units | undefined => {
  if (range === null) return undefined;
  if (range.length > 1 || range[0]!.length > 1)
    throw new InputError("invalid", "units", "{parameter} takes one value, not a range");
  const cell = range[0]![0] ?? null;
  return isBlank(cell, false)
    ? undefined
    : unitsKind.read([cell], 0, { units: "inch", memo, shop: undefined }, "units");
};

const readSettings = (entry: Entry, range: Range | null): ShopBlock | undefined => {
  if (range !== null && range.some((r) => r.some((c) => !isBlank(c, false)))) return readShopBlock(range);
  if (entry.takes.settings === "required")
    throw new InputError("invalid", "settings", "{parameter} is empty; point it at the shop block");
  return undefined;
};

function prepare(entry: Entry, given: Given, memo: Memo): Call {
  const range = (name: string): Range | null => withoutError(given.get(name) ?? null, name);
  const named = readUnits(range("units"), memo);
  const block = readSettings(entry, range("settings"));
  const ofBlock = entry.takes.units === true ? block?.units : undefined;
  return { entry, units: named ?? ofBlock ?? "inch", shown: readShow(entry, range("show")), block, memo };
}

/** The saw of an item; undefined where the function reads no shop block or none is given. */
function shopReader(
  { entry, block, units, memo }: Call,
  saw: Laid | undefined,
): (row: number, column: number) => Shop | undefined {
  if (entry.takes.settings === undefined) return () => undefined;
  const read = saw === undefined ? undefined : itemReader(saw);
  return (row, column) => {
    const name = read?.(row, column, { units, memo, shop: undefined }) as string | undefined;
    if (block !== undefined) return pickSaw(block, name);
    if (name !== undefined)
      throw new InputError(
        "invalid",
        "saw",
        "{parameter} is given without settings: it names a column of the shop block",
      );
    return undefined;
  };
}

/** One argument ready for the loop: what does not vary has been read, or refused, before it. */
interface Ready {
  readonly name: string;
  readonly fixed: Read | undefined;
  readonly read: Reader;
}

const isFixed = (a: Laid): boolean => a.rows === 1 && a.columns === 1;

/** Makes the runner of items: it gives what the core function gives, or throws the refusal. */
function itemRunner(
  call: Call,
  laid: readonly Laid[],
  saw: Laid | undefined,
): (row: number, column: number) => unknown {
  const { entry, units, memo } = call;
  const kept = keptRows(laid.filter((a) => a.param.list));
  const shopAt = shopReader(call, saw);
  const oneShop = saw === undefined || isFixed(saw) ? attempt(() => shopAt(0, 0)) : undefined;
  const reading = { units, memo, shop: oneShop !== undefined && "value" in oneShop ? oneShop.value : undefined };
  const ready = laid.map((a): Ready => {
    const read: Reader = a.param.list ? (_, __, r) => readList(a, kept, r) : itemReader(a);
    return {
      name: a.name,
      fixed: isFixed(a) && oneShop !== undefined && "value" in oneShop ? attempt(() => read(0, 0, reading)) : undefined,
      read,
    };
  });
  const needsShop = entry.takes.settings !== undefined;
  return (row, column) => {
    if (oneShop !== undefined && "refusal" in oneShop) throw oneShop.refusal;
    const own = oneShop === undefined ? { units, memo, shop: shopAt(row, column) } : reading;
    const input: Record<string, unknown> = {};
    for (const { name, fixed, read } of ready) {
      if (fixed === undefined) input[name] = read(row, column, own);
      else if ("value" in fixed) input[name] = fixed.value;
      else throw fixed.refusal;
    }
    if (needsShop) input["shop"] = own.shop ?? defaultShop;
    return entry.run(input as never);
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

/** The rows of results. A refused item fills its whole width, so no array is jagged. */
function fillRows(
  call: Call,
  all: readonly Laid[],
  size: { readonly rows: number; readonly columns: number },
  item: (row: number, column: number) => unknown,
): Cell[][] {
  const {
    entry: { result },
    shown,
    units,
  } = call;
  const print = printers(result, shown.columns, units);
  const isGap = gapTest(all);
  const rows: Cell[][] = [];
  for (let row = 0; row < size.rows; row += 1) {
    const line: Cell[] = [];
    const gap = isGap(row);
    for (let column = 0; column < size.columns; column += 1) {
      if (gap) fill(line, "", print.length);
      else pushItem(line, print, units, item, row, column);
    }
    rows.push(line);
  }
  return rows;
}

const fill = (line: Cell[], cell: Cell, times: number): void => {
  for (let i = 0; i < times; i += 1) line.push(cell);
};

function pushItem(
  line: Cell[],
  print: readonly Printer[],
  units: Units,
  item: (row: number, column: number) => unknown,
  row: number,
  column: number,
): void {
  try {
    const value = item(row, column);
    for (const one of print) line.push(one(value));
  } catch (thrown) {
    if (!isRefusal(thrown)) throw thrown;
    const cell = refusalCell(thrown, units);
    fill(line, cell, print.length);
  }
}

function run(call: Call, places: readonly Slot[], given: Given): Cell[][] {
  const {
    entry: { result, takes },
    shown,
    units,
  } = call;
  const params = places.flatMap((s) => (s.role === "param" ? [lay(s.name, s.param, given.get(s.name) ?? null)] : []));
  const sawCells = given.get("saw") ?? null;
  const all = dropBlankRows(
    takes.saw === true && sawCells !== null ? [...params, lay("saw", sawParam, sawCells)] : params,
  );
  const size = sizeOf(all, shown.card || shown.columns.length > 1);
  const cells = size.rows * size.columns * shown.columns.length;
  if (cells > mostCells)
    throw new InputError(
      "invalid",
      "",
      `this call would fill ${cells} cells; at most ${mostCells} are filled: use a smaller range`,
    );
  if (shown.card && size.rows > 1)
    throw new InputError("invalid", "show", "a card is for one item; here are {items}", { items: String(size.rows) });
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

/**
 * One worksheet call. `args` are the ranges in the worksheet's order, null where left out. Every host calls this, and
 * nothing but an error of our own is ever thrown out of it.
 */
export function call(entry: Entry, args: readonly (Range | null)[], memo: Memo): Cell[][] {
  const places = slots(entry);
  const given = new Map(places.map((s, i) => [s.name, args[i] ?? null]));
  const ready = attempt(() => prepare(entry, given, memo));
  if ("refusal" in ready) return [[refusalCell(ready.refusal, "inch")]];
  const done = attempt(() => run(ready.value, places, given));
  return "refusal" in done ? [[refusalCell(done.refusal, ready.value.units)]] : done.value;
}
