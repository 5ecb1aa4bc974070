import { describe, expect, it } from "vitest";
import { InputError } from "../../../src/errors";
import type { Shop } from "../../../src/shop/shop";
import { entry, list, listByRow, listWithHoles, one, optional } from "../../../functions/bind/entry";
import { number, tableRow, text } from "../../../functions/kinds";
import { CellError, type Cell, type Range } from "../../../functions/kinds/cell";
import { run, text0, total, words } from "./fixture";

type Numbers = readonly (number | undefined)[];
const shown = (xs: readonly unknown[] | undefined): string =>
  xs === undefined ? "none" : xs.map((x) => x ?? "-").join(" ");

/** What a core function gets of its lists, as text. */
const seen = entry({
  ...words,
  run: ({
    xs,
    notes,
    others,
  }: {
    readonly xs: Numbers;
    readonly notes: readonly string[] | undefined;
    readonly others: Numbers;
  }) => `${shown(xs)} | ${shown(notes)} | ${shown(others)}`,
  params: {
    xs: listWithHoles(number("count"), ""),
    others: listWithHoles(number("count"), "", "others"),
    notes: optional(list(text, "")),
  },
  takes: {},
  result: { form: "cell", as: "text", help: "" },
});

const saws = entry({
  ...words,
  run: ({ xs, shops }: { readonly xs: readonly number[]; readonly shops: readonly (Shop | InputError)[] }) =>
    xs
      .map((x, i) => {
        const shop = shops[i]!;
        return shop instanceof InputError ? `${x}: ${shop.problem}` : `${x}@${shop.setupMinutes}`;
      })
      .join(" "),
  params: { xs: list(number("count"), "") },
  takes: { settings: "optional", saw: "list" },
  result: { form: "cell", as: "text", help: "" },
});

const log = entry({
  ...words,
  run: ({ xs, ys }: { readonly xs: readonly (number | InputError | undefined)[]; readonly ys: typeof xs }) =>
    xs.map((x, i) => [x, ys[i]].map((c) => (c instanceof InputError ? c.problem : String(c))).join("/")).join(" "),
  params: { xs: listByRow(number("count"), ""), ys: listByRow(number("count"), "") },
  takes: {},
  result: { form: "cell", as: "text", help: "" },
});

const block = entry({
  ...words,
  run: ({ rows, n }: { readonly rows: readonly (readonly Cell[])[]; readonly n: number }) =>
    rows[n - 1]!.map(String).join(" "),
  params: { rows: list(tableRow, ""), n: one(number("count"), "") },
  takes: {},
  result: { form: "cell", as: "text", help: "" },
});

const column = (...cells: readonly Cell[]): Range => cells.map((c) => [c]);
const twoSaws: Range = [
  ["Units", "inch", ""],
  ["Saw", "A", "B"],
  ["Set-up minutes", 5, 9],
];

describe("lists of one group", () => {
  it("are equally long, in a column or a row; rows blank in all of them are dropped", () => {
    expect(run(total, column(1, 2, null, 3), column(10, 20, null, 30))).toEqual([[140]]);
    expect(run(total, [[1, 2, 3]], [[1, 1, 1]])).toEqual([[6]]);
    expect(text0(run(total, column(1, 2, 3), column(1, 2)))).toBe(
      "ys has 2 rows, xs 3: lists must be equally long, or one cell for all rows",
    );
  });

  it("may be one cell that holds for all rows", () => {
    expect(run(total, column(1, 2, 3), 10)).toEqual([[60]]);
    expect(run(total, 10, column(1, 2, 3))).toEqual([[60]]);
    expect(run(total, column(1, null, 3), 10)).toEqual([[40]]);
  });

  it("name the row of a blank cell where the kind allows none", () => {
    expect(text0(run(total, column(1, 2), column(1, null)))).toBe("ys: row 2 is empty or 0");
  });

  it("give a hole where one is allowed, and are not given where all of them are blank", () => {
    expect(run(seen, column(1, null, 3), 7, column("a", "b", "c"))).toEqual([["1 - 3 | a b c | 7"]]);
    expect(text0(run(seen, column(null, null), 7))).toBe("xs is empty or 0");
  });
});

describe("lists of another group", () => {
  it("may have another length", () => {
    expect(run(seen, column(1, 2, 3), column(8, null, 9, 10, 11))).toEqual([["1 2 3 | none | 8 9 10 11"]]);
  });
});

describe("a saw for each row", () => {
  it("gives the core function a shop for each", () => {
    expect(run(saws, column(1, 2, 3), twoSaws, column("A", "b", "A"))).toEqual([["1@5 2@9 3@5"]]);
    expect(run(saws, column(1, 2), twoSaws, "B")).toEqual([["1@9 2@9"]]);
    expect(run(saws, column(1, 2), null, null)).toEqual([["1@0 2@0"]]);
  });

  it("gives the refusal to its row where it is unknown, missing, or without a block", () => {
    expect(run(saws, column(1, 2), twoSaws, column("A", "C"))).toEqual([
      ['1@5 2: "{saw}" is not in the shop block; it names {saws}'],
    ]);
    expect(run(saws, column(1, 2), twoSaws, column("A", null))).toEqual([
      ["1@5 2: {parameter} is empty; the shop block names {saws}"],
    ]);
    expect(String(run(saws, column(1, 2), null, "A"))).toMatch(/^1: \{parameter\} is given without settings.* 2: /);
    expect(String(run(saws, column(1, 2), twoSaws, column(7, new CellError("#REF!"))))).toMatch(
      /^1: \{parameter\} is a number, not text 2: \{parameter\} is \{error\}/,
    );
  });
});

describe("a list of which each row stands for itself", () => {
  it("keeps its holes, names its wrong cells, and drops only blank rows at its end", () => {
    expect(
      run(log, column(1, null, "x", new CellError("#N/A"), null, null), column(2, null, 3, null, 5, null)),
    ).toEqual([
      ["1/2 undefined/undefined {parameter} is text, not a number/3 {parameter} is {error}/undefined undefined/5"],
    ]);
  });
});

describe("a list of whole rows", () => {
  it("takes every column of the range, whatever its width", () => {
    const wide = Array.from({ length: 90 }, (_, i) => i + 1);
    expect(run(block, [["a", 1, null], wide.slice(0, 3)], 1)).toEqual([["a 1 null"]]);
    expect(run(block, [wide, wide], 2)).toEqual([[wide.join(" ")]]);
  });
});

it("a list that may be left out is left out where all of it is blank, whatever its group holds", () => {
  expect(run(seen, column(1, 2), 7, column(null, null))).toEqual([["1 2 | none | 7"]]);
  expect(run(seen, column(1, 2), 7, column("", null))).toEqual([["1 2 | none | 7"]]);
});
it("one list of a group whose rows stand for themselves keeps the holes of all of it", () => {
  const mixed = entry({
    ...words,
    run: ({ xs, ys }: { readonly xs: readonly unknown[]; readonly ys: readonly unknown[] }) =>
      `${shown(xs)} | ${shown(ys)}`,
    params: { xs: listByRow(number("count"), ""), ys: listWithHoles(number("count"), "") },
    takes: {},
    result: { form: "cell", as: "text", help: "" },
  });
  expect(run(mixed, column(1, null, 3, null), column(4, null, 6, null))).toEqual([["1 - 3 | 4 - 6"]]);
});
