import { describe, expect, it } from "vitest";
import type { Shop } from "../../../src/shop/shop";
import { entry, list, listWithHoles, one, optional } from "../../../functions/bind/entry";
import { number, tableRow, text } from "../../../functions/kinds";
import type { Cell, Range } from "../../../functions/kinds/cell";
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
  run: ({ xs, shops }: { readonly xs: readonly number[]; readonly shops: readonly Shop[] }) =>
    xs.map((x, i) => `${x}@${shops[i]!.setupMinutes}`).join(" "),
  params: { xs: list(number("count"), "") },
  takes: { settings: "optional", saw: "list" },
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

  it("is refused where it is unknown, missing, or without a block", () => {
    expect(text0(run(saws, column(1, 2), twoSaws, column("A", "C")))).toBe(
      'saw: "C" is not in the shop block; it names a, b',
    );
    expect(text0(run(saws, column(1, 2), twoSaws, column("A", null)))).toMatch(/^saw is empty; the shop block names/);
    expect(text0(run(saws, column(1, 2), null, "A"))).toMatch(/^saw is given without settings/);
  });
});

describe("a list of whole rows", () => {
  it("takes every column of the range, whatever its width", () => {
    const wide = Array.from({ length: 90 }, (_, i) => i + 1);
    expect(run(block, [["a", 1, null], wide.slice(0, 3)], 1)).toEqual([["a 1 null"]]);
    expect(run(block, [wide, wide], 2)).toEqual([[wide.join(" ")]]);
  });
});
