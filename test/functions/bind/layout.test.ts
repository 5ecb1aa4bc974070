import { describe, expect, it } from "vitest";
import { each, one, optional, type Param } from "../../../functions/bind/entry";
import { dropBlankRows, isBlankRow, lay, sizeOf } from "../../../functions/bind/layout";
import { blade, number } from "../../../functions/kinds";
import { InputError } from "../../../src/errors";
import type { Range } from "../../../functions/kinds/cell";

const count = each(number("count"), "") as Param<unknown>;
const triple = optional(each(blade, "")) as Param<unknown>;

describe("an argument laid out", () => {
  it("counts its items: a blade is three neighbouring cells", () => {
    expect(
      lay("a", count, [
        [1, 2],
        [3, 4],
      ]),
    ).toMatchObject({ rows: 2, columns: 2 });
    expect(lay("a", triple, [[1, 2, 3, 4, 5, 6]])).toMatchObject({ rows: 1, columns: 2 });
    expect(lay("a", count, null)).toMatchObject({ rows: 1, columns: 1 });
    expect(() => lay("a", triple, [[1, 2]])).toThrow(/takes 3 neighbouring cells a row: it has 2/);
  });

  it("is refused where one value is wanted and a range given", () => {
    expect(() => lay("a", one(number("count"), "") as Param<unknown>, [[1], [2]])).toThrow(
      /takes one value, not a range/,
    );
  });

  it("loses the rows at the bottom that are blank in every range", () => {
    const a = lay("a", count, [[1], [null], [""], [0]]);
    const b = lay("b", count, [[1], [2], [null], [null]]);
    expect(dropBlankRows([a, b]).map((x) => x.rows)).toEqual([2, 2]);
    expect(isBlankRow(a, 2)).toBe(true);
    const uneven = [a, lay("c", count, [[1], [2]])];
    expect(dropBlankRows(uneven)).toBe(uneven);
  });

  it("gives the size of the answer: one item, or as many", () => {
    const column: Range = [[1], [2], [3]];
    expect(sizeOf([lay("a", count, column), lay("b", count, [[1, 2]])], false)).toEqual({ rows: 3, columns: 2 });
    expect(() => sizeOf([lay("a", count, column), lay("b", count, [[1], [2]])], false)).toThrow(/sizes must match/);
    expect(() => sizeOf([lay("a", count, [[1, 2]])], true)).toThrow(/must be a column here/);
  });
});

it("refusals whole", () => {
  const refused = (run: () => unknown) => {
    try {
      run();
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return [error.reason, error.parameter, error.problem, error.facts];
    }
    throw new Error("not refused");
  };
  const row = one(blade, "") as Param<unknown>;
  expect(refused(() => lay("a", triple, [[1, 2]]))).toEqual([
    "invalid",
    "a",
    "{parameter} takes 3 neighbouring cells a row: it has 2",
    {},
  ]);
  expect(
    refused(() =>
      lay("a", row, [
        [1, 2, 3],
        [1, 2, 3],
      ]),
    ),
  ).toEqual([
    // prettier-ignore
    "invalid",
    "a",
    "{parameter} takes one row of 3 cells",
    {},
  ]);
  expect(refused(() => lay("a", one(number("count"), "") as Param<unknown>, [[1, 2]]))).toEqual([
    "invalid",
    "a",
    "{parameter} takes one value, not a range",
    {},
  ]);
  expect(lay("a", row, [[1, 2, 3]])).toMatchObject({ rows: 1, columns: 1 });
  const column: Range = [[1], [2], [3]];
  expect(refused(() => sizeOf([lay("oneName", count, column), lay("b", count, [[1], [2]])], false))).toEqual([
    "invalid",
    "b",
    "{parameter} has 2 × 1 items, {other} 3 × 1: sizes must match",
    { other: "one name" },
  ]);
  expect(refused(() => sizeOf([lay("a", count, [[1, 2, 3]]), lay("b", count, [[1, 2]])], false))).toEqual([
    "invalid",
    "b",
    "{parameter} has 1 × 2 items, {other} 1 × 3: sizes must match",
    { other: "a" },
  ]);
  expect(refused(() => sizeOf([lay("a", count, [[1, 2]])], true))).toEqual([
    "invalid",
    "a",
    "{parameter} must be a column here: each item gives a row of results",
    {},
  ]);
  expect(sizeOf([], true)).toEqual({ rows: 1, columns: 1 });
  expect(sizeOf([lay("a", count, [[1]]), lay("b", count, column)], true)).toEqual({ rows: 3, columns: 1 });
});
