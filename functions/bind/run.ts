import { InputError } from "../../src/errors";
import type { Units } from "../../src/quantities";
import { defaultShop } from "../../src/shop/defaultShop";
import type { Shop } from "../../src/shop/shop";
import { attempt, type Read } from "../kinds/refusal";
import type { Kept, Reading } from "../kinds/kind";
import { pickSaw, type ShopBlock } from "../shop/block";
import type { Entry } from "./entry";
import { itemReader, type Reader } from "./items";
import type { Laid } from "./layout";
import { givenRefusal, keptRows, readList } from "./lists";
import type { Shown } from "./show";

/** What holds for the whole call, before the first item is read. */
export interface Call {
  readonly entry: Entry;
  readonly units: Units;
  /** Neither the call nor its shop block gives them. */
  readonly unitsAssumed: boolean;
  readonly shown: Shown;
  readonly block: ShopBlock | undefined;
  readonly memo: Kept;
}

/** One saw by its name; undefined where the function reads no shop block or none is given. */
function pick({ entry, block }: Call, name: string | undefined): Shop | undefined {
  if (entry.takes.settings === undefined) return undefined;
  if (block !== undefined) return pickSaw(block, name);
  if (name !== undefined)
    throw new InputError(
      "invalid",
      "saw",
      "{parameter} is given without settings: it names a column of the shop block",
    );
  return undefined;
}

/** One argument ready for the loop: what does not vary has been read, or refused, before it. */
interface Ready {
  readonly name: string;
  readonly fixed: Read | undefined;
  readonly read: Reader;
}

const isFixed = (a: Laid): boolean => a.rows === 1 && a.columns === 1;

/** What the core function is given of the shop block at an item: the saw there, or the saws of its lists' rows. */
interface Shops {
  /** The saw of every item, where it is one; its refusal is every item's. */
  readonly one: Read<Shop | undefined> | undefined;
  readonly at: (row: number, column: number) => Shop | undefined;
  readonly ofRows: readonly (Shop | InputError)[] | undefined;
}

/** A saw for each row that the lists of the call share: a row whose saw is refused has the refusal. */
function shopsOfRows(call: Call, saw: Laid | undefined, kept: ReadonlyMap<string, readonly number[]>): Shops {
  const reading: Reading = { units: call.units, memo: call.memo, shop: undefined };
  const rows = kept.get("") ?? [];
  const names = saw === undefined ? undefined : readList(saw, kept, reading);
  const ofRows = rows.map((_, i) => {
    const name = (names as readonly (string | InputError | undefined)[] | undefined)?.[i];
    return name instanceof InputError ? name : givenRefusal(() => pick(call, name) ?? defaultShop, "saw");
  }) as readonly (Shop | InputError)[];
  const first = ofRows.find((shop): shop is Shop => !(shop instanceof InputError));
  return { one: { value: first }, at: () => first, ofRows };
}

function shopsOf(call: Call, saw: Laid | undefined, kept: ReadonlyMap<string, readonly number[]>): Shops {
  if (call.entry.takes.saw === "list") return shopsOfRows(call, saw, kept);
  const { units, memo } = call;
  const read = saw === undefined ? undefined : itemReader(saw);
  const at = (row: number, column: number): Shop | undefined =>
    pick(call, read?.(row, column, { units, memo, shop: undefined }) as string | undefined);
  return { one: saw === undefined || isFixed(saw) ? attempt(() => at(0, 0)) : undefined, at, ofRows: undefined };
}

/** Makes the runner of items: it gives what the core function gives, or throws the refusal. */
export function itemRunner(
  call: Call,
  laid: readonly Laid[],
  saw: Laid | undefined,
): (row: number, column: number) => unknown {
  const { entry, units, unitsAssumed, memo } = call;
  const lists = [...laid, ...(saw === undefined ? [] : [saw])].filter((a) => a.param.list !== undefined);
  const kept = keptRows(lists);
  const { one, at, ofRows } = shopsOf(call, saw, kept);
  const reading = { units, unitsAssumed, memo, shop: one !== undefined && "value" in one ? one.value : undefined };
  const ready = laid.map((a): Ready => {
    const read: Reader = a.param.list === undefined ? itemReader(a) : (_, __, r) => readList(a, kept, r);
    const early = isFixed(a) && one !== undefined && "value" in one;
    return { name: a.name, fixed: early ? attempt(() => read(0, 0, reading)) : undefined, read };
  });
  const shared = entry.takes.settings === undefined ? undefined : ofRows === undefined ? "shop" : "shops";
  // What does not vary stands in the record before the loop.
  const still: Record<string, unknown> = Object.fromEntries(
    ready.map(({ name, fixed }) => [name, fixed !== undefined && "value" in fixed ? fixed.value : undefined]),
  );
  if (shared === "shop") still["shop"] = reading.shop ?? defaultShop;
  if (shared === "shops") still["shops"] = ofRows;
  const moving = ready.filter(({ fixed }) => fixed === undefined || "refusal" in fixed);
  return (row, column) => {
    if (one !== undefined && "refusal" in one) throw one.refusal;
    const own = one === undefined ? { units, unitsAssumed, memo, shop: at(row, column) } : reading;
    const input = { ...still };
    for (const { name, fixed, read } of moving) {
      if (fixed !== undefined && "refusal" in fixed) throw fixed.refusal;
      input[name] = read(row, column, own);
    }
    if (one === undefined && shared === "shop") input["shop"] = own.shop ?? defaultShop;
    return entry.run(input as never);
  };
}
