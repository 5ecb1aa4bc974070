import type { InputError } from "../../src/errors";
import type { Text } from "../../src/phrase";
import type { Quantity } from "../../src/quantities";
import type { Shop } from "../../src/shop/shop";
import type { Working } from "../../src/steps";
import type { Cell, Range } from "../kinds/cell";
import type { Kept, Kind } from "../kinds/kind";

type Missing<T> = "refuse" | { readonly is: T };

/** How a list is read: lists of one group have a row for each other's, or one cell for all rows. */
export interface ListOf {
  readonly group: string;
  /** A blank cell is a hole, given as undefined, where another list of the group has a value. */
  readonly holes: boolean;
  /** A wrong cell is given as its refusal, and no row is dropped but blank ones at the end: the place in the list is the row. */
  readonly byRow: boolean;
}

/** One argument. `varies`: may be a range, one item per result. `list`: the whole range is the one value. */
export interface Param<T, Varies extends boolean = boolean> {
  readonly kind: Kind<T & {}>;
  readonly varies: Varies;
  readonly list: ListOf | undefined;
  readonly help: string;
  readonly missing: Missing<T>;
  /** Label of the shop block that gives the value when the argument does not. */
  readonly block: keyof Shop | undefined;
}

const param = <T, V extends boolean>(kind: Kind<T & {}>, varies: V, help: string): Param<T & {}, V> => ({
  kind,
  varies,
  list: undefined,
  help,
  missing: "refuse",
  block: undefined,
});

/** An argument that may be a range, one item per row. */
export const each = <T>(kind: Kind<T & {}>, help: string): Param<T & {}, true> => param(kind, true, help);
/** An argument of one item for the whole call. */
export const one = <T>(kind: Kind<T & {}>, help: string): Param<T & {}, false> => param(kind, false, help);
const listParam = <T>(kind: Kind<T & {}>, help: string, list: ListOf): Param<T, false> => ({
  kind: kind,
  varies: false,
  list,
  help,
  missing: "refuse",
  block: undefined,
});
/**
 * A whole range read as one argument, in a column or a row. Lists of one group are equally long, or one cell that holds
 * for all rows; rows blank in all of them are dropped.
 */
export const list = <T>(kind: Kind<T & {}>, help: string, group = ""): Param<readonly (T & {})[], false> =>
  listParam(kind as unknown as Kind<readonly (T & {})[]>, help, { group, holes: false, byRow: false });
/** A list of which a row may be blank: the core function then gets undefined there. */
export const listWithHoles = <T>(
  kind: Kind<T & {}>,
  help: string,
  group = "",
): Param<readonly (T | undefined)[], false> =>
  listParam(kind as unknown as Kind<readonly (T | undefined)[]>, help, { group, holes: true, byRow: false });
/** A list of which each row stands for itself, as in a log: a hole is given as undefined, a wrong cell as its refusal. */
export const listByRow = <T>(
  kind: Kind<T & {}>,
  help: string,
  group = "",
): Param<readonly (T | InputError | undefined)[], false> =>
  listParam(kind as unknown as Kind<readonly (T | InputError | undefined)[]>, help, {
    group,
    holes: true,
    byRow: true,
  });
/** May be left out; the core function then gets undefined. */
export const optional = <T, V extends boolean>(p: Param<T & {}, V>): Param<T | undefined, V> => ({
  ...p,
  missing: { is: undefined },
});
/** May be left out; the core function then gets `is`. Where `is` is not 0, 0 must be out of the kind's range. */
export const orElse = <T, V extends boolean>(p: Param<T & {}, V>, is: NoInfer<T & {}>): Param<T & {}, V> => ({
  ...p,
  missing: { is },
});
/** When the argument is not given, the shop block's value is taken before the default. */
export const fromBlock = <T, V extends boolean>(p: Param<T, V>, block: keyof Shop): Param<T, V> => ({ ...p, block });

/** What a result is: a number of a quantity, or text. */
export type Out = Quantity | "text";

export interface Column<O extends Out = Out> {
  readonly as: O;
  readonly help: string;
  /** Significant digits on a card. */
  readonly digits: number;
}

export const column = <O extends Out>(as: O, help: string, digits = 4): Column<O> => ({ as, help, digits });

type Columns = Readonly<Record<string, Column>>;

/** A cell per item, where `of` names the field of the core's result that it shows; a row of named columns per item, of which `show` picks; or a table, alone in its spill, without its headings where it stands under another. */
export type Result =
  | { readonly form: "cell"; readonly as: Out; readonly of?: string; readonly help: string }
  | { readonly form: "row"; readonly columns: Columns; readonly main: string | undefined }
  | { readonly form: "table"; readonly columns: Columns; readonly headless?: true };

type Value<O> = O extends "text" ? Text : number;
/** undefined: nothing belongs there, as in the last row of a table; the cell is empty. */
type Line<C> = { readonly [K in keyof C]: C[K] extends Column<infer O> ? Value<O> | InputError | undefined : never };

export type Returned<R> = R extends { form: "cell"; as: infer O; of: infer F extends string }
  ? { readonly [K in F]: Value<O> }
  : R extends { form: "cell"; as: infer O }
    ? Value<O>
    : R extends { form: "row"; columns: infer C }
      ? Line<C>
      : R extends { form: "table"; columns: infer C }
        ? readonly Line<C>[]
        : never;

export type Take = "optional" | "required";

/** The arguments that bind itself reads. */
export interface Takes {
  readonly show?: Take;
  readonly settings?: Take;
  /** "list": a name for each row of the lists; the core function then gets `shops`, one for each row, or its refusal. */
  readonly saw?: true | "list";
  readonly units?: boolean;
  /** The arguments of another function, as many as that takes: they repeat, and are read by `answer`. */
  readonly arguments?: true;
}

/** What an entry says of itself. */
interface EntryText {
  readonly name: string;
  /** The subject, and so the page of the docs, this function belongs to. */
  readonly subject: string;
  readonly help: string;
  /** A call that runs as it stands, without "=". The first one is shown first. */
  readonly examples: readonly [string, ...string[]];
  readonly source: string;
  /** What people ask when they look for this function. */
  readonly asks: readonly string[];
}

export interface Entry extends EntryText {
  readonly params: Readonly<Record<string, Param<unknown>>>;
  readonly takes: Takes;
  readonly result: Result;
  readonly run: (input: never) => unknown;
  /** How its answer comes about, step by step. */
  readonly working?: Working<never> | undefined;
  /** A function about other functions answers a call by itself, from the ranges as they come. */
  readonly answer?: ((args: readonly (Range | null)[], memo: Kept) => Cell[][]) | undefined;
}

/**
 * A core function that reads the shop block takes it as `shop`, or as `shops`, one for each row of its lists: neither is a
 * parameter, so the entry must take settings, and a list of saws.
 */
type NeedsSettings<I> = "shops" extends keyof I
  ? Takes & { readonly settings: Take; readonly saw: "list" }
  : "shop" extends keyof I
    ? Takes & { readonly settings: Take; readonly saw?: true }
    : Takes & { readonly saw?: true };
type NeedsShow<R> = R extends { form: "row"; main: undefined }
  ? { readonly show: "required" }
  : R extends { form: "row" }
    ? { readonly show: "optional" }
    : { readonly show?: never };

/**
 * The compiler holds: parameters are exactly the core function's inputs; results are what it returns; a table takes no
 * ranges of items; a function that reads the shop block takes settings; a row without a main column requires show.
 */
export const entry = <I extends object, const R extends Result>(
  e: EntryText & {
    readonly run: (input: I) => Returned<R>;
    readonly working?: Working<I>;
    readonly answer?: Entry["answer"];
    readonly result: R;
    readonly takes: NoInfer<NeedsSettings<I> & NeedsShow<R>>;
    readonly params: NoInfer<{
      readonly [K in Exclude<keyof I, "shop" | "shops">]-?: Param<I[K], R["form"] extends "table" ? false : boolean>;
    }>;
  },
): Entry => e;
