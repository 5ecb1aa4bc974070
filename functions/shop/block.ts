import * as z from "zod/mini";
import { InputError } from "../../src/errors";
import type { Units } from "../../src/quantities";
import { bladeClasses } from "../../src/blade/bladeClass";
import { groups } from "../../src/data/groups";
import { findMaterial } from "../../src/material/findMaterial";
import type { Material } from "../../src/material/material";
import { ownMaterial } from "../../src/material/ownMaterial";
import type { Shop, Special } from "../../src/shop/shop";
import { defaultShop } from "../../src/shop/defaultShop";
import { material, number, text } from "../kinds";
import { unkept, type Kept, type Kind, type Reading } from "../kinds/kind";
import { cellSchema } from "../kinds/schema";
import { CellError, isBlank, type Cell, type Range } from "../kinds/cell";
import { printText } from "../kinds/sentence";
import { fold, fromOf, holdsForAll, refuse, refuseDoubled, type Found, type Labelled } from "./labelled";
import { shopLabels } from "./labels";
import { words } from "../kinds/words";

/** The shop block of one call: its own units, and a Shop for each saw it names. */
export interface ShopBlock {
  readonly units: Units;
  readonly saws: ReadonlyMap<string, Shop>;
  readonly names: readonly string[];
}

const byLabel = new Map(shopLabels.map((row) => [row.label.toLowerCase(), row]));
const specials = shopLabels.filter((row) => row.special === true);

/** What a core reader refuses is a fault of the block: it is named by its label, in the block's own units. */
function inBlock<T>(label: string, units: Units, read: () => T): T {
  try {
    return read();
  } catch (refusal) {
    if (!(refusal instanceof InputError)) throw refusal;
    throw refuse("{label}: {issue}", {
      label,
      issue: printText(
        { template: refusal.problem, facts: { ...refusal.facts, parameter: words(refusal.parameter) } },
        units,
      ),
    });
  }
}

/** The grade named after a label; the label is unknown when nothing of that name is. */
const gradeOf = (name: string, written: string, own: readonly Material[]): string => {
  try {
    return findMaterial(name, own).key;
  } catch (refusal) {
    if (refusal instanceof InputError)
      throw refuse('"{label}" names neither a cutting group nor one grade', { label: written.trim().slice(0, 60) });
    throw refusal;
  }
};

function findLabel(written: string, own: readonly Material[]): Found {
  const folded = fold(written);
  const row = byLabel.get(folded);
  if (row !== undefined) return { row, of: undefined, blade: undefined, written };
  const start = specials.find((s) => folded.startsWith(`${s.label.toLowerCase()} `));
  if (start === undefined)
    throw refuse('"{label}" is not a label of the shop block', { label: written.trim().slice(0, 40) });
  const named = folded.slice(start.label.length + 1);
  const blade = start.byBlade === true ? bladeClasses.find((b) => named.endsWith(`, ${b}`)) : undefined;
  const rest = blade === undefined ? named : named.slice(0, -blade.length - 2);
  const group = groups.find((g) => g.name.toLowerCase() === rest)?.name ?? groups.find((g) => g.label === rest)?.label;
  return { row: start, of: group ?? gradeOf(rest, written, own), blade, written };
}

const readingIn = (units: Units): Reading => ({ units, memo: unkept, shop: undefined });

function readValue({ row, written }: Found, cell: Cell, units: Units): unknown {
  if (cell instanceof CellError) throw refuse("{label} is {error}", { label: written, error: cell.code });
  const parsed = cellSchema(row.kind, readingIn(units), written.trim()).safeParse(cell);
  if (!parsed.success) throw refuse("{issue}", { issue: parsed.error.issues[0]?.message ?? "" });
  return parsed.data;
}

interface Row {
  readonly label: string;
  readonly cells: readonly Cell[];
  /** Place in the range, from 1. */
  readonly at: number;
}

const isOwn = (row: Row): boolean => fold(row.label) === "own material";

/** The block's rows after the header: label and value cells; rows without a label are refused when they hold values. */
function labelledRows(range: Range): Row[] {
  const rows: Row[] = [];
  for (const [i, [label, ...cells]] of range.entries()) {
    if (isBlank(label, false)) {
      if (cells.every((c) => isBlank(c, false))) continue;
      throw refuse("a row of the shop block has a value but no label");
    }
    if (typeof label !== "string")
      throw refuse('the first column of the shop block holds its labels; the first row is "Units"');
    rows.push({ label, cells, at: i + 1 });
  }
  return rows;
}

const readUnits = (rows: readonly Row[]): Units => {
  const first = rows[0];
  if (first === undefined || fold(first.label) !== "units")
    throw refuse(
      'the first row of the shop block must be "Units" with inch or metric beside it; the range may be off by a row',
    );
  const units = fold(first.cells.find((c) => !isBlank(c, false)));
  if (units !== "inch" && units !== "metric") throw refuse('"Units" must be inch or metric');
  return units;
};

/** The cells beside "Own material", in their order; their ranges are the core's. */
const ownCells = (units: Units) => {
  const cell = <T>(kind: Kind<T>, name: string) => cellSchema(kind, readingIn(units), name);
  return z.tuple([
    cell(text, "name"),
    cell(material, ""),
    z.nullable(cell(number("ratio"), "rate factor")),
    z.nullable(cell(number("density"), "density")),
    z.nullable(cell(number("pricePerMass"), "price")),
  ]);
};

/** A row "Own material": name, like a known grade, rate factor, density, price, in the block's units. */
function readOwnMaterial({ cells }: Row, units: Units): Material {
  const error = cells.find((c): c is CellError => c instanceof CellError);
  if (error !== undefined) throw refuse("Own material is {error}", { error: error.code });
  const schema = ownCells(units);
  const given = schema.def.items.map((_, i) => (isBlank(cells[i], false) ? null : cells[i]!));
  const [first, second] = given;
  const wrong = (issue: string): InputError =>
    refuse("Own material {name}: {issue}", { name: typeof first === "string" ? first : "", issue });
  if (first === null) throw wrong("needs a name");
  if (second === null) throw wrong("needs a known grade that it is like");
  const parsed = schema.safeParse(given);
  if (!parsed.success) throw wrong(parsed.error.issues[0]?.message ?? "");
  const [name, like, rateFactor, density, price] = parsed.data;
  return inBlock("Own material", units, () =>
    ownMaterial({
      name,
      like,
      rateFactor: rateFactor ?? undefined,
      density: density ?? undefined,
      price: price ?? undefined,
    }),
  );
}

/** Which value columns are saws. A last column without a single number, unnamed in the Saw row, is a comment. */
function sawColumns(rows: readonly Row[]): { readonly name: string; readonly at: number }[] {
  const sawRow = rows.find((r) => fold(r.label) === "saw");
  const width = rows[0]!.cells.length;
  const used = (at: number, test: (c: Cell) => boolean) => rows.some((r) => test(r.cells[at] ?? null));
  if (sawRow === undefined) {
    const extra = Array.from({ length: width }, (_, at) => at)
      .slice(1)
      .filter((at) => used(at, (c) => typeof c === "number" && c !== 0));
    if (extra.length > 0) throw refuse('the shop block has several value columns; name them in a row "Saw"');
    return [{ name: "", at: 0 }];
  }
  const named = sawRow.cells
    .map((c, at) => ({ name: fold(c), at, written: c }))
    .filter((s) => !isBlank(s.written, false));
  if (named.length === 0) throw refuse('the row "Saw" of the shop block names no saw');
  for (const [i, s] of named.entries()) {
    if (s.name === "") throw refuse('the names in the row "Saw" must be text');
    if (named.findIndex((other) => other.name === s.name) !== i)
      throw refuse('the row "Saw" names "{saw}" twice', { saw: s.name });
  }
  return named;
}

/** Puts one value where its label says; special values are collected beside the general one. */
function put(shop: Record<string, unknown>, { row, of, blade: own }: Found, value: unknown, from?: string): void {
  const [field, blade] = row.key.split(".") as [string, string | undefined];
  if (from !== undefined && of === undefined) shop[`${field}From`] = from;
  if (of !== undefined) {
    const special: Special = {
      of,
      value: value as number,
      ...(own === undefined ? {} : { blade: own }),
      ...(from === undefined ? {} : { from }),
    };
    if (blade === undefined) shop[`${field}s`] = [...(shop[`${field}s`] as readonly Special[]), special];
    else {
      const all = shop["specialLives"] as Readonly<Record<string, readonly Special[]>>;
      shop["specialLives"] = { ...all, [blade]: [...(all[blade] ?? []), special] };
    }
  } else shop[field] = blade === undefined ? value : { ...(shop[field] as object), [blade]: value };
}

function shopOf(labels: readonly Labelled[], at: number, all: number | undefined, units: Units): Shop {
  const given: string[] = [];
  const shop: Record<string, unknown> = { ...defaultShop, given };
  for (const label of labels) {
    const { found, cells } = label;
    const own = cells[holdsForAll(label) ? 0 : at] ?? null;
    const cell = isBlank(own, false) && all !== undefined ? (cells[all] ?? null) : own;
    if (isBlank(cell, false)) continue;
    put(shop, found, readValue(found, cell, units), fromOf(label));
    given.push(found.row.key);
  }
  return shop as unknown as Shop;
}

/**
 * Reads the shop block: label beside value, or one value column per saw; the first row is Units. A range that slid, an
 * unknown or doubled label, and a value out of range are refused by name: nothing is read by its position.
 */
export function readShopBlock(range: Range): ShopBlock {
  const rows = labelledRows(range);
  const units = readUnits(rows);
  const others = rows.filter((r) => !isOwn(r));
  const columns = sawColumns(others);
  const ownMaterials = rows.filter(isOwn).map((r) => readOwnMaterial(r, units));
  const labels = others
    .slice(1)
    .filter((r) => fold(r.label) !== "saw")
    .map((r): Labelled => ({ found: findLabel(r.label, ownMaterials), cells: r.cells, at: r.at }));
  refuseDoubled(labels.filter(({ cells }) => columns.some(({ at }) => !isBlank(cells[at], false))));
  const all = columns.find((c) => c.name === "all");
  const own = columns.filter((c) => c !== all);
  const saws = (own.length > 0 ? own : columns).map(
    (c) => [c.name, { ...shopOf(labels, c.at, all?.at, units), ownMaterials }] as const,
  );
  return { units, saws: new Map(saws), names: saws.map(([name]) => name) };
}

/** A longer block is read at each call: what is kept stays small. */
const longestKey = 10_000;

/** Every cell of a range, its type and its length before it: two ranges of one key are equal cell by cell. */
function keyOf(range: Range): string {
  let key = String(range[0]!.length);
  for (const row of range) {
    for (const cell of row) {
      const text = cell instanceof CellError ? cell.code : String(cell);
      key += cell === null ? "-" : `${(typeof cell)[0]!}${text.length}:${text}`;
    }
    if (key.length > longestKey) return "";
  }
  return key;
}

/** The shop block of these cells, read once: other cells are another block. */
export function keptShopBlock(range: Range, memo: Kept): ShopBlock {
  const key = keyOf(range);
  return key === "" ? readShopBlock(range) : memo.get("shop block", "", key, () => readShopBlock(range));
}

/** A refusal repeats no more of what was typed. */
const longestEcho = 60;

/** The saw that an item names; needless where the block has one column. */
export function pickSaw(block: ShopBlock, name: string | undefined): Shop {
  if (name === undefined) {
    const [first, ...others] = block.saws.values();
    if (first === undefined || others.length > 0)
      throw new InputError("invalid", "saw", "{parameter} is empty; the shop block names {saws}", {
        saws: block.names.join(", "),
      });
    return first;
  }
  const found = block.saws.get(fold(name));
  if (found === undefined)
    throw new InputError("none", "saw", '"{saw}" is not in the shop block; it names {saws}', {
      saw: name.slice(0, longestEcho),
      saws: block.names.filter((s) => s !== "").join(", ") || "no saw",
    });
  return found;
}
