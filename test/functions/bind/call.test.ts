import { describe, expect, it } from "vitest";
import { number } from "../../../functions/kinds";
import { CellError, type Range } from "../../../functions/kinds/cell";
import { each, entry } from "../../../functions/bind/entry";
import { words, run, text0, add, inches, both, rows, price, huge, label } from "./fixture";

describe("ranges", () => {
  it("give a result per row, spread a single value, and cross a column with a row", () => {
    expect(run(add, [[1], [2], [3]], 10)).toEqual([[11], [12], [13]]);
    expect(run(add, [[1], [2]], [[10], [20]])).toEqual([[11], [22]]);
    expect(run(add, [[1], [2]], [[10, 20, 30]])).toEqual([
      [11, 21, 31],
      [12, 22, 32],
    ]);
    expect(
      run(
        add,
        [
          [1, 2],
          [3, 4],
        ],
        1,
      ),
    ).toEqual([
      [2, 3],
      [4, 5],
    ]);
  });

  it("of different size are one refusal that names both", () => {
    const got = run(add, [[1], [2]], [[1], [2], [3]]);
    expect(got.length).toBe(1);
    expect(text0(got)).toBe("b has 3 × 1 items, a 2 × 1: sizes must match");
  });

  it("lose the rows that are blank at the bottom of all, and show an inner one as empty text", () => {
    expect(run(add, [[1], [null], [3], [null], [0], [""]], [[1], [null], [1], [null], [null], [null]])).toEqual([
      [2],
      [""],
      [4],
    ]);
    expect(run(add, [[1], [null]], [[1], [5]])[1]![0]).toBeInstanceOf(CellError);
  });

  it("of more than a hundred thousand results are refused", () => {
    const long: Range = Array.from({ length: 100_001 }, () => [1]);
    expect(text0(run(add, long))).toMatch(/100001 cells; at most 100000/);
    expect(run(add, long.slice(1)).length).toBe(100_000);
  });

  it("of blades are read three cells a row", () => {
    expect(
      run(price, [
        [100, 50, 2],
        [90, 30, 1],
      ]),
    ).toEqual([[2], [3]]);
    expect(text0(run(price, [[100, 50]]))).toBe("b takes 3 neighbouring cells a row: it has 2");
    expect(text0(run(price, [[100, 0, 2]]))).toBe("b life is empty or 0");
    expect(text0(run(price, [[100, 2, 50]]))).toMatch(/the rate is not less than the life/);
  });

  it("whose fixed argument is refused still pass the error of an earlier argument", () => {
    const got = run(add, [[1], [new CellError("#N/A")]], "x");
    expect((got[0]![0] as CellError).code).toBe("#VALUE!");
    expect((got[1]![0] as CellError).code).toBe("#N/A");
  });
});

describe("show", () => {
  it("gives the main column, names, all, or a row of headings", () => {
    expect(run(both, 2, null)).toEqual([[1]]);
    expect(run(both, 2, " DOUBLE ")).toEqual([[4]]);
    expect(run(both, [[1], [2]], "all")).toEqual([
      [0.5, 2, "ok"],
      [1, 4, "ok"],
    ]);
    expect(run(both, [[1], [2]], [["said", "half"]])).toEqual([
      ["ok", 0.5],
      ["ok", 1],
    ]);
  });

  it("refuses a column of names, an unknown name, a row of items with several results", () => {
    expect(text0(run(both, 2, [["half"], ["said"]]))).toBe("show takes one cell or one row of names");
    expect(text0(run(both, 2, "third"))).toBe(
      'show: "third" is not a result; choose from half, double, said, all or card',
    );
    expect(text0(run(both, [[1, 2]], "all"))).toBe("a must be a column here: each item gives a row of results");
  });

  it("keeps the width of a refused row, and refuses one field alone", () => {
    const got = run(both, [["x"], [3]], "all");
    expect(got.map((r) => r.length)).toEqual([3, 3]);
    expect(got[0]!.every((c) => c instanceof CellError)).toBe(true);
    expect([got[1]![0], (got[1]![1] as CellError).code, (got[1]![1] as CellError).text, got[1]![2]]).toEqual([
      expect.closeTo(1.5, 12),
      "#N/A",
      "too big at 3 in",
      "ok",
    ]);
  });

  it("gives a card of label, value, unit, note, for one item", () => {
    expect(run(both, 1 / 3, "card")).toEqual([
      ["half", 0.1667, "in", "a half"],
      ["double", 0.6667, "in", "twice"],
      ["said", "ok", "", "words"],
    ]);
    expect(run(both, 3, "card")[1]).toEqual(["double", "-", "", "too big at 3 in"]);
    expect(text0(run(both, [[1], [2]], "card"))).toMatch(/a card is for one item/);
  });
});

describe("tables", () => {
  it("stand alone in their spill under their headings, in the caller's units", () => {
    expect(run(rows, 2)).toEqual([
      ["depth", "said"],
      [0, "row 0"],
      [1 / 25.4, "row 1"],
    ]);
    expect(text0(run(rows, [[1], [2]]))).toBe("n takes one value, not a range");
  });
});

describe("units", () => {
  it("convert on the way in and on the way out, and speak in the refusal", () => {
    expect(run(inches, 2, "metric")).toEqual([[2]]);
    expect(text0(run(inches, -2, "metric"))).toBe("a must be more than 0 mm; it is -2 mm");
    expect(text0(run(inches, -2))).toBe("a must be more than 0 in; it is -2 in");
    expect(text0(run(inches, 1, "yards"))).toBe('units must be "inch" or "metric"; it is "yards"');
  });
});

describe("results", () => {
  it("that no cell can hold are #NUM!", () => {
    expect((run(huge, null)[0]![0] as CellError).code).toBe("#NUM!");
  });

  it("are text where the function gives text", () => {
    expect(run(label, "3/4")).toEqual([["3/4"]]);
    expect(text0(run(label, 3))).toBe("t is a number, not text");
  });

  it("a bug inside a function surfaces instead of becoming a cell error", () => {
    const broken = entry({
      ...words,
      run: ({ a }: { readonly a: number }): number => (undefined as unknown as { x: number }[])[a]!.x,
      params: { a: each(number("count"), "") },
      takes: {},
      result: { form: "cell", as: "count", help: "" },
    });
    expect(() => run(broken, 1)).toThrow(TypeError);
  });
});
