import { InputError } from "../src/errors";
import type { Units } from "../src/quantities";
import { defaultShop } from "../src/shop/defaultShop";
import type { Shop } from "../src/shop/shop";
import { choice, text } from "./arguments";
import { CellError, isBlank, type Cell, type Range } from "./cell";
import { slots, type Entry, type Param, type Slot } from "./entry";
import { keptRows, readItem, readList } from "./items";
import { dropBlankRows, isBlankRow, lay, sizeOf, type Laid } from "./layout";
import type { Memo } from "./memo";
import { attempt, errorIn, refusalCell, type Read } from "./refusal";
import { cardCells, itemCells, tableCells } from "./results";
import { pickSaw, readShopBlock, type ShopBook } from "./shopBlock";
import { readShow, type Shown } from "./show";

export const mostCells = 100_000;

/** What holds for the whole call, before the first item is read. */
interface Call {
  readonly entry: Entry;
  readonly units: Units;
  readonly shown: Shown;
  readonly book: ShopBook | undefined;
  readonly memo: Memo;
}

type Given = ReadonlyMap<string, Range | null>;

const unitsKind = choice("inch", "metric");
const sawParam: Param<unknown> = { kind: text, varies: true, list: false, help: "", missing: { is: undefined }, block: undefined };

const withoutError = (range: Range | null, name: string): Range | null => {
  const error = range?.flat().find((c): c is CellError => c instanceof CellError);
  if (error !== undefined) throw errorIn(error, name);
  return range;
};

const readUnits = (range: Range | null, memo: Memo): Units | undefined => {
  if (range === null) return undefined;
  if (range.length > 1 || range[0]!.length > 1) throw new InputError("invalid", "units", "{parameter} takes one value, not a range");
  const cell = range[0]![0] ?? null;
  return isBlank(cell, false) ? undefined : unitsKind.read([cell], 0, { units: "inch", memo, shop: undefined }, "units");
};

const readBook = (entry: Entry, range: Range | null): ShopBook | undefined => {
  if (range !== null && range.some((r) => r.some((c) => !isBlank(c, false)))) return readShopBlock(range);
  if (entry.takes.settings === "required") throw new InputError("invalid", "settings", "{parameter} is empty; point it at the shop block");
  return undefined;
};

function prepare(entry: Entry, given: Given, memo: Memo): Call {
  const range = (name: string): Range | null => withoutError(given.get(name) ?? null, name);
  const named = readUnits(range("units"), memo);
  const book = readBook(entry, range("settings"));
  const fromBook = entry.takes.units === true ? book?.units : undefined;
  return { entry, units: named ?? fromBook ?? "inch", shown: readShow(entry, range("show")), book, memo };
}

/** The saw of an item; undefined where the function reads no shop block or none is given. */
function shopAt({ entry, book, units, memo }: Call, saw: Laid | undefined, row: number, column: number): Shop | undefined {
  if (entry.takes.settings === undefined) return undefined;
  const name = saw === undefined ? undefined : (readItem(saw, row, column, { units, memo, shop: undefined }) as string | undefined);
  if (book !== undefined) return pickSaw(book, name);
  if (name !== undefined) throw new InputError("invalid", "saw", "{parameter} is given without settings: it names a column of the shop block");
  return undefined;
}

/** Makes the runner of items: what does not vary is read once, the rest item by item. */
function itemRunner(call: Call, laid: readonly Laid[], saw: Laid | undefined): (row: number, column: number) => Read {
  const { entry, units, memo } = call;
  const kept = keptRows(laid.filter((a) => a.param.list));
  const isFixed = (a: Laid): boolean => a.rows === 1 && a.columns === 1;
  const read = (a: Laid, row: number, column: number, shop: Shop | undefined): unknown => (a.param.list ? readList(a, kept, { units, memo, shop }) : readItem(a, row, column, { units, memo, shop }));
  const oneShop = saw === undefined || isFixed(saw) ? attempt(() => shopAt(call, saw, 0, 0)) : undefined;
  if (oneShop !== undefined && "refusal" in oneShop) return () => oneShop;
  const fixed = laid.map((a) => (oneShop !== undefined && isFixed(a) ? attempt(() => read(a, 0, 0, oneShop.value)) : undefined));
  const refused = fixed.find((f) => f !== undefined && "refusal" in f);
  const run = (row: number, column: number): unknown => {
    const shop = oneShop === undefined ? shopAt(call, saw, row, column) : oneShop.value;
    const input: Record<string, unknown> = {};
    for (let i = 0; i < laid.length; i += 1) {
      const before = fixed[i];
      input[laid[i]!.name] = before !== undefined && "value" in before ? before.value : read(laid[i]!, row, column, shop);
    }
    if (entry.takes.settings !== undefined) input["shop"] = shop ?? defaultShop;
    return entry.run(input as never);
  };
  return refused === undefined ? (row, column) => attempt(() => run(row, column)) : (row, column) => firstRefusal(laid, fixed, refused, () => run(row, column));
}

/** An argument refused for all items hides no error that stands before it in an item's own row. */
function firstRefusal(laid: readonly Laid[], fixed: readonly (Read | undefined)[], refused: Read, run: () => unknown): Read {
  const at = fixed.indexOf(refused);
  if (laid.slice(0, at).every((_, i) => fixed[i] !== undefined)) return refused;
  const done = attempt(run);
  return "refusal" in done ? done : refused;
}

/** The rows of results; an inner row that is blank in every range gives empty text. */
function fillRows(call: Call, all: readonly Laid[], size: { readonly rows: number; readonly columns: number }, item: (row: number, column: number) => Read): Cell[][] {
  const { entry: { result }, shown, units } = call;
  const ranges = all.filter((a) => a.rows > 1);
  const isGap = (row: number): boolean => ranges.length > 0 && ranges.every((a) => isBlankRow(a, row));
  const several = shown.columns.length > 1;
  const width = several ? shown.columns.length : size.columns;
  return Array.from({ length: size.rows }, (_, row): Cell[] => {
    if (isGap(row)) return new Array<Cell>(width).fill("");
    if (several) return [...itemCells(result, item(row, 0), shown.columns, units)];
    return Array.from({ length: size.columns }, (__, column) => itemCells(result, item(row, column), shown.columns, units)[0]!);
  });
}

function run(call: Call, places: readonly Slot[], given: Given): Cell[][] {
  const { entry: { result, takes }, shown, units } = call;
  const params = places.flatMap((s) => (s.role === "param" ? [lay(s.name, s.param, given.get(s.name) ?? null)] : []));
  const sawCells = given.get("saw") ?? null;
  const all = dropBlankRows(takes.saw === true && sawCells !== null ? [...params, lay("saw", sawParam, sawCells)] : params);
  const size = sizeOf(all, shown.card || shown.columns.length > 1);
  const cells = size.rows * size.columns * shown.columns.length;
  if (cells > mostCells) throw new InputError("invalid", "", `this call would fill ${cells} cells; at most ${mostCells} are filled: use a smaller range`);
  if (shown.card && size.rows > 1) throw new InputError("invalid", "show", "a card is for one item; here are {items}", { items: String(size.rows) });
  const item = itemRunner(call, all.slice(0, params.length), all[params.length]);
  if (result.form === "table") return tableCells(result, item(0, 0), units);
  if (result.form === "row" && shown.card) return cardCells(result, item(0, 0), units);
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
