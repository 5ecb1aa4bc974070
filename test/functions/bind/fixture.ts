import { InputError } from "../../../src/errors";
import type { Blade } from "../../../src/cost/blade";
import type { Shop } from "../../../src/shop/shop";
import { blade, number, text } from "../../../functions/kinds";
import { call } from "../../../functions/bind/call";
import { CellError, type Cell, type Range } from "../../../functions/kinds/cell";
import { column, each, entry, fromBlock, list, one, optional, orElse, type Entry } from "../../../functions/bind/entry";
import { Memo } from "../../../functions/bind/memo";

/** Entries of no trade, one for each thing that bind does. */

export const words = { name: "X", subject: "", help: "", examples: ["SAW.X()"], source: "", asks: [] } as const;
export const run = (e: Entry, ...args: readonly (Range | Cell)[]): Cell[][] =>
  call(
    e,
    args.map((a) => (Array.isArray(a) ? a : a === null ? null : [[a as Cell]]) as Range | null),
    new Memo(),
  );
export const text0 = (cells: Cell[][]): string => (cells[0]![0] as CellError).text;

export const add = entry({
  ...words,
  run: ({ a, b }: { readonly a: number; readonly b: number }) => a + b,
  params: { a: each(number("count"), ""), b: orElse(each(number("count", { zeroIsValue: true }), ""), 0) },
  takes: {},
  result: { form: "cell", as: "count", help: "" },
});
export const inches = entry({
  ...words,
  run: ({ a }: { readonly a: number }) => a,
  params: { a: each(number("size"), "") },
  takes: { units: true },
  result: { form: "cell", as: "size", help: "" },
});
export const both = entry({
  ...words,
  run: ({ a }: { readonly a: number }): { half: number; double: number | InputError; said: string } => ({
    half: a / 2,
    double: a > 60 ? new InputError("none", "", "too big at {a}", { a: { number: a, quantity: "size" } }) : 2 * a,
    said: "ok",
  }),
  params: { a: each(number("size"), "") },
  takes: { show: "optional", units: true },
  result: {
    form: "row",
    main: "half",
    columns: { half: column("size", "a half"), double: column("size", "twice"), said: column("text", "words") },
  },
});
export const total = entry({
  ...words,
  run: ({ xs, ys }: { readonly xs: readonly number[]; readonly ys: readonly number[] }) =>
    xs.reduce((s, x, i) => s + x * ys[i]!, 0),
  params: { xs: list(number("count"), ""), ys: list(number("count"), "") },
  takes: {},
  result: { form: "cell", as: "count", help: "" },
});
export const rows = entry({
  ...words,
  run: ({ n }: { readonly n: number }) => Array.from({ length: n }, (_, i) => ({ depth: i, said: `row ${i}` })),
  params: { n: one(number("count"), "") },
  takes: {},
  result: { form: "table", columns: { depth: column("size", ""), said: column("text", "") } },
});
export const fed = entry({
  ...words,
  run: ({ minutes, shop }: { readonly minutes: number; readonly shop: Shop }) => minutes + shop.guideGap / 1000,
  params: { minutes: fromBlock(each(number("minutes"), ""), "handlingMinutes") },
  takes: { settings: "optional", saw: true, units: true },
  result: { form: "cell", as: "minutes", help: "" },
});
export const price = entry({
  ...words,
  run: ({ b }: { readonly b: Blade }) => b.price / b.life,
  params: { b: each(blade, "") },
  takes: {},
  result: { form: "cell", as: "money", help: "" },
});
export const huge = entry({
  ...words,
  run: ({ a }: { readonly a: number | undefined }) => (a ?? 1) / 0,
  params: { a: optional(each(number("count"), "")) },
  takes: {},
  result: { form: "cell", as: "count", help: "" },
});
export const label = entry({
  ...words,
  run: ({ t }: { readonly t: string }) => t,
  params: { t: each(text, "") },
  takes: {},
  result: { form: "cell", as: "text", help: "" },
});
