import type { Quantity, Units } from "../../src/quantities";
import type { Shop } from "../../src/shop/shop";
import type { Cell } from "./cell";

/** Keeps what was read from a cell by a reader in one way, so that a column of equal texts is read once. */
export interface Kept {
  get<T>(reader: string, by: string, cell: unknown, read: () => T, most?: number): T;
  /** Keeps what was solved for a few things that it has given before. */
  solved<T>(what: string, by: readonly unknown[], solve: () => T): T;
}

/** Keeps nothing: for what is read once from outside. */
export const unkept: Kept = { get: (_, __, ___, read) => read(), solved: (_, __, solve) => solve() };

/** What a kind may know of the call while it reads a cell. */
export interface Reading {
  readonly units: Units;
  /** Neither the call nor its shop block gives the units: they are assumed. */
  readonly unitsAssumed?: boolean;
  readonly memo: Kept;
  readonly shop: Shop | undefined;
}

/** Reads the cells of one item, `width` neighbours in one row starting at `at`. Checks shape and range, converts once. */
export interface Kind<T> {
  readonly name: string;
  /** Neighbouring cells that an item takes; "row": all of a row of a list. */
  readonly width: number | "row";
  /** 0 is a value of its own here, not a blank cell. */
  readonly zeroIsValue: boolean;
  /** What the docs and the argument's help say of unit and range. */
  readonly says: (units: Units) => string;
  /** What a number here measures. */
  readonly quantity?: Quantity;
  /** The words accepted, where there is a fixed list. */
  readonly choices?: readonly string[];
  readonly read: (cells: readonly Cell[], at: number, reading: Reading, parameter: string) => T;
}
