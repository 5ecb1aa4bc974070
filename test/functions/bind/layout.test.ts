import { describe, expect, it } from "vitest";
import { each, one, optional, type Param } from "../../../functions/bind/entry";
import { dropBlankRows, isBlankRow, lay, sizeOf } from "../../../functions/bind/layout";
import { blade, number } from "../../../functions/kinds";
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
