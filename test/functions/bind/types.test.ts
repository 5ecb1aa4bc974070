import { describe, expect, it } from "vitest";
import type { InputError } from "../../../src/errors";
import type { Shop } from "../../../src/shop/shop";
import { number, text } from "../../../functions/kinds";
import { column, each, entry, list, one, optional, orElse } from "../../../functions/bind/entry";

/** Must compile, and must not: the compiler's own check is `npm test`'s "types: test". */

const words = { name: "X", subject: "", help: "", examples: ["SAW.X()"], source: "", asks: [] } as const;
const double = ({ size }: { readonly size: number }): number => 2 * size;
const cell = { form: "cell", as: "size", help: "" } as const;
const row = { form: "row", main: "a", columns: { a: column("size", ""), b: column("text", "") } } as const;
const rowRun = ({ size }: { readonly size: number }): { a: number; b: string | InputError } => ({ a: size, b: "" });
const withShop = ({ size, shop }: { readonly size: number; readonly shop: Shop }): number => size + shop.guideGap;

export const good = [
  entry({ ...words, run: double, params: { size: each(number("size"), "") }, takes: {}, result: cell }),
  entry({
    ...words,
    run: double,
    params: { size: orElse(one(number("size"), ""), 1) },
    takes: { units: true },
    result: cell,
  }),
  entry({
    ...words,
    run: ({ size = 1 }: { readonly size: number | undefined }) => size,
    params: { size: optional(each(number("size"), "")) },
    takes: {},
    result: cell,
  }),
  entry({
    ...words,
    run: rowRun,
    params: { size: each(number("size"), "") },
    takes: { show: "optional" },
    result: row,
  }),
  entry({
    ...words,
    run: withShop,
    params: { size: each(number("size"), "") },
    takes: { settings: "optional" },
    result: cell,
  }),
  entry({
    ...words,
    run: ({ sizes }: { readonly sizes: readonly number[] }) => sizes.length,
    params: { sizes: list(number("size"), "") },
    takes: {},
    result: cell,
  }),
];

export const refused = [
  // @ts-expect-error a parameter is missing
  entry({ ...words, run: double, params: {}, takes: {}, result: cell }),
  // @ts-expect-error a parameter is renamed
  entry({ ...words, run: double, params: { length: each(number("size"), "") }, takes: {}, result: cell }),
  entry({
    ...words,
    run: double,
    // @ts-expect-error a parameter too many
    params: { size: each(number("size"), ""), other: each(number("size"), "") },
    takes: {},
    result: cell,
  }),
  // @ts-expect-error a parameter of the wrong type
  entry({ ...words, run: double, params: { size: each(text, "") }, takes: {}, result: cell }),
  // @ts-expect-error optional, but the core function wants a value
  entry({ ...words, run: double, params: { size: optional(each(number("size"), "")) }, takes: {}, result: cell }),
  // @ts-expect-error a default of the wrong type
  entry({ ...words, run: double, params: { size: orElse(each(number("size"), ""), "1") }, takes: {}, result: cell }),
  entry({
    ...words,
    // @ts-expect-error the result is text, the function gives a number
    run: double,
    params: { size: each(number("size"), "") },
    takes: {},
    result: { form: "cell", as: "text", help: "" },
  }),
  entry({
    ...words,
    // @ts-expect-error a column that the function does not give
    run: rowRun,
    params: { size: each(number("size"), "") },
    takes: { show: "optional" },
    result: { ...row, columns: { ...row.columns, c: column("size", "") } },
  }),
  // @ts-expect-error a row must take show
  entry({ ...words, run: rowRun, params: { size: each(number("size"), "") }, takes: {}, result: row }),
  entry({
    ...words,
    run: rowRun,
    params: { size: each(number("size"), "") },
    // @ts-expect-error a row without a main column must require show
    takes: { show: "optional" },
    result: { ...row, main: undefined },
  }),
  // @ts-expect-error a function that reads the shop block must take settings
  entry({ ...words, run: withShop, params: { size: each(number("size"), "") }, takes: {}, result: cell }),
  entry({
    ...words,
    run: ({ size }: { readonly size: number }) => [{ a: size }],
    // @ts-expect-error a table takes no ranges of items
    params: { size: each(number("size"), "") },
    takes: {},
    result: { form: "table", columns: { a: column("size", "") } },
  }),
  // @ts-expect-error an unknown quantity
  entry({ ...words, run: double, params: { size: each(number("weight"), "") }, takes: {}, result: cell }),
];

describe("the types of an entry", () => {
  it("take six good entries and refuse thirteen bad ones (checked by tsc)", () => {
    expect([good.length, refused.length]).toEqual([6, 13]);
  });
});
