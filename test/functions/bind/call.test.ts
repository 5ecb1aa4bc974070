import { describe, expect, it } from "vitest";
import { blade, length, number, pitch, section, text } from "../../../functions/kinds";
import { CellError, type Cell, type Range } from "../../../functions/kinds/cell";
import { catalogue } from "../../../functions/catalogue";
import { call } from "../../../functions/bind/call";
import { Memo } from "../../../functions/bind/memo";
import { parseCall } from "../../../functions/bind/parseCall";
import { column, each, entry, fromBlock, type Param } from "../../../functions/bind/entry";
import { words, run, text0, add, inches, both, fed, rows, price, huge, label } from "./fixture";

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

describe("what every call is asked first", () => {
  const code = (cells: Cell[][]): string => (cells[0]![0] as CellError).code;
  it("an error in units, show or settings goes out, the five that hosts send as they are", () => {
    for (const error of ["#N/A", "#DIV/0!", "#NUM!"]) {
      expect(code(run(inches, 2, new CellError(error)))).toBe(error);
      expect(code(run(both, 2, new CellError(error)))).toBe(error);
      expect(code(run(fed, 2, [["Units", new CellError(error)]]))).toBe(error);
    }
    expect(text0(run(inches, 2, new CellError("#REF!")))).toBe("units is #REF!");
  });
  it("a blank cell, an empty text and 0 are no units and no shop block", () => {
    for (const nothing of [null, "", 0]) {
      expect(run(inches, 2, [[nothing]])).toEqual(run(inches, 2));
      expect(run(fed, 5, [[nothing, nothing]])).toEqual(run(fed, 5));
    }
  });
  it("units are one value; a shop block that must be given is asked for", () => {
    expect(text0(run(inches, 2, [["inch"], ["inch"]]))).toBe("units takes one value, not a range");
    expect(text0(run(inches, 2, [["inch", "inch"]]))).toBe("units takes one value, not a range");
    const wanted = { ...fed, takes: { ...fed.takes, settings: "required" as const } };
    expect(text0(run(wanted as never, 5, null))).toBe("settings is empty; point it at the shop block");
  });
  it("the units of a shop block hold where the function takes units, and are the answer's", () => {
    const metric: Range = [["Units", "metric"]];
    const sized = (units: boolean) =>
      entry({
        ...words,
        run: ({ a }: { readonly a: number }) => a,
        params: { a: each(number("size"), "") },
        takes: { settings: "optional", ...(units ? { units: true as const } : {}) },
        result: { form: "cell", as: "size", help: "" },
      });
    expect(text0(run(sized(true), -2, metric))).toBe("a must be more than 0 mm; it is -2 mm");
    expect(text0(run(sized(false), -2, metric))).toBe("a must be more than 0 in; it is -2 in");
    expect(text0(run(sized(true), -2, metric, "inch"))).toBe("a must be more than 0 in; it is -2 in");
  });
  it("a size is read and given in inches: 2 in is 50.8 mm inside", () => {
    const inside = { ...inches, result: { form: "cell", as: "count", help: "" } as const };
    expect(run(inside, 2)).toEqual([[expect.closeTo(50.8, 12)]]);
    expect(run(inches, 2)).toEqual([[2]]);
  });
});

describe("refusals whole", () => {
  it("a card and a table are of one item", () => {
    expect(text0(run(both, [[1], [2]], "card"))).toBe("show: a card is for one item; here are 2");
    const many = entry({
      ...words,
      run: ({ n }: { readonly n: number }) => [{ depth: n }],
      // WORKING makes a table of any entry, whose arguments may be ranges.
      params: { n: each(number("count"), "") as never },
      takes: {},
      result: { form: "table", columns: { depth: column("size", "") } },
    });
    for (const [cells, items] of [
      [[[1], [2]], 2],
      [
        [
          [1, 2],
          [3, 4],
        ],
        4,
      ],
    ] as const)
      expect(text0(run(many, cells as never))).toBe(`this table is for one item; here are ${items}`);
  });
  it("a call that would fill too many cells", () => {
    const long: Range = Array.from({ length: 50_001 }, () => [1, 2]);
    expect(text0(run(add, long))).toBe(
      "this call would fill 100002 cells; at most 100000 are filled: use a smaller range",
    );
    expect(
      text0(
        run(
          both,
          long.map(([a]) => [a!]),
          "all",
        ),
      ),
    ).toBe("this call would fill 150003 cells; at most 100000 are filled: use a smaller range");
  });
  it("a number that no cell can hold", () => {
    expect(text0(run(huge, null))).toBe("the result is not a number that a cell can hold");
  });
  it("a card and a table of a refused item are its one cell", () => {
    expect(run(both, "x", "card")).toEqual([[expect.any(CellError)]]);
    expect(text0(run(both, "x", "card"))).toBe("a is text, not a number");
    expect(run(rows, "x")).toEqual([[expect.any(CellError)]]);
  });
  it("an empty argument, by its kind", () => {
    const says = (param: Param<never>): string =>
      text0(
        run(
          entry({
            ...words,
            run: () => 1,
            params: { a: param },
            takes: { settings: "optional", units: true },
            result: { form: "cell", as: "count", help: "" },
          } as never),
          null,
        ),
      );
    expect(says(each(number("count"), "") as never)).toBe("a is empty or 0");
    expect(says(each(number("count", { zeroIsValue: true }), "") as never)).toBe("a is empty");
    expect(says(each(text, "") as never)).toBe("a is empty");
    expect(says(each(blade, "") as never)).toBe("a is empty or 0");
    expect(says(each(length(), "") as never)).toBe("a is empty or 0");
    expect(says(each(pitch, "") as never)).toBe("a is empty or 0");
    expect(says(each(section, "") as never)).toBe(
      'a is empty. A size without quotes, such as W12, is a cell\'s address: put it in quotes, "W12x50"',
    );
    expect(says(fromBlock(each(length(), ""), "stockLength") as never)).toBe(
      "a is empty or 0, and the shop block does not give it",
    );
  });
  it("0 is no number where nothing is meant by it, and a number where it is", () => {
    expect(text0(run(add, 0))).toBe("a is empty or 0");
    expect(run(add, 1, 0)).toEqual([[1]]);
    expect(run(add, [[1], [0], [2]], [[1], [1], [1]])[2]).toEqual([3]);
  });
  it("a saw without a shop block", () => {
    expect(text0(run(fed, 5, null, "A"))).toBe("saw is given without settings: it names a column of the shop block");
  });
});

it("one row beside rows stays one when blank rows at the bottom are dropped", () => {
  expect(run(add, [[1], [2], [null]], [[5]])).toEqual([[6], [7]]);
});
it("a row of results where every range is blank is as wide as the others", () => {
  expect(run(both, [[1], [null], [2]], [["half", "said"]])).toEqual([
    [0.5, "ok"],
    ["", ""],
    [1, "ok"],
  ]);
});

describe("a shop block of which some cells are filled", () => {
  const of = (name: string, formula: string): Cell =>
    call(
      catalogue.find((e) => e.name === name)!,
      parseCall(formula).args,
      new Memo(),
    )[0]![0]!;

  it("is none where all cells are blank: the answer is that without a block", () => {
    const plain = of("CUTTIME", 'SAW.CUTTIME("round 4", 12)');
    expect(plain).toBeTypeOf("number");
    for (const block of ['{"",""}', '{"","";"",""}', '""'])
      expect(of("CUTTIME", `SAW.CUTTIME("round 4", 12, , ${block})`), block).toBe(plain);
  });

  it("is read, and refused, where one cell is filled and its row is not", () => {
    for (const block of ['{"nonsense",""}', '{"","5"}', '{"","";"Hourly cost",""}'])
      expect(of("CUTTIME", `SAW.CUTTIME("round 4", 12, , ${block})`), block).toMatchObject({
        code: "#VALUE!",
        text: expect.stringContaining("shop block"),
      });
  });

  it("is asked for where it is needed", () => {
    for (const block of ['{"",""}', '""'])
      expect(of("QUOTE", `SAW.QUOTE("round 4", "bi-metal", 3, ${block}, "A36", 3)`)).toMatchObject({
        code: "#VALUE!",
        text: "settings is empty; point it at the shop block",
      });
  });
});
