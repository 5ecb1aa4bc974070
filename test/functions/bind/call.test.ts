import { describe, expect, it } from "vitest";
import { InputError } from "../../../src/errors";
import type { Blade } from "../../../src/cost/blade";
import type { Shop } from "../../../src/shop/shop";
import { blade, number, text } from "../../../functions/kinds";
import { call } from "../../../functions/bind/call";
import { catalogue } from "../../../functions/catalogue";
import { CellError, type Cell, type Range } from "../../../functions/kinds/cell";
import { column, each, entry, fromBlock, list, one, optional, orElse, type Entry } from "../../../functions/bind/entry";
import { Memo } from "../../../functions/bind/memo";

const words = { name: "X", subject: "", help: "", examples: ["SAW.X()"], source: "", asks: [] } as const;
const run = (e: Entry, ...args: readonly (Range | Cell)[]): Cell[][] =>
  call(
    e,
    args.map((a) => (Array.isArray(a) ? a : a === null ? null : [[a as Cell]]) as Range | null),
    new Memo(),
  );
const text0 = (cells: Cell[][]): string => (cells[0]![0] as CellError).text;

const add = entry({
  ...words,
  run: ({ a, b }: { readonly a: number; readonly b: number }) => a + b,
  params: { a: each(number("count"), ""), b: orElse(each(number("count", { zeroIsValue: true }), ""), 0) },
  takes: {},
  result: { form: "cell", as: "count", help: "" },
});
const inches = entry({
  ...words,
  run: ({ a }: { readonly a: number }) => a,
  params: { a: each(number("size"), "") },
  takes: { units: true },
  result: { form: "cell", as: "size", help: "" },
});
const both = entry({
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
const total = entry({
  ...words,
  run: ({ xs, ys }: { readonly xs: readonly number[]; readonly ys: readonly number[] }) =>
    xs.reduce((s, x, i) => s + x * ys[i]!, 0),
  params: { xs: list(number("count"), ""), ys: list(number("count"), "") },
  takes: {},
  result: { form: "cell", as: "count", help: "" },
});
const rows = entry({
  ...words,
  run: ({ n }: { readonly n: number }) => Array.from({ length: n }, (_, i) => ({ depth: i, said: `row ${i}` })),
  params: { n: one(number("count"), "") },
  takes: {},
  result: { form: "table", columns: { depth: column("size", ""), said: column("text", "") } },
});
const fed = entry({
  ...words,
  run: ({ minutes, shop }: { readonly minutes: number; readonly shop: Shop }) => minutes + shop.guideGap / 1000,
  params: { minutes: fromBlock(each(number("minutes"), ""), "handlingMinutes") },
  takes: { settings: "optional", saw: true, units: true },
  result: { form: "cell", as: "minutes", help: "" },
});
const price = entry({
  ...words,
  run: ({ b }: { readonly b: Blade }) => b.price / b.life,
  params: { b: each(blade, "") },
  takes: {},
  result: { form: "cell", as: "money", help: "" },
});
const huge = entry({
  ...words,
  run: ({ a }: { readonly a: number | undefined }) => (a ?? 1) / 0,
  params: { a: optional(each(number("count"), "")) },
  takes: {},
  result: { form: "cell", as: "count", help: "" },
});
const label = entry({
  ...words,
  run: ({ t }: { readonly t: string }) => t,
  params: { t: each(text, "") },
  takes: {},
  result: { form: "cell", as: "text", help: "" },
});

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

describe("lists and tables", () => {
  it("read a whole range as one, drop rows blank in all, and refuse unequal lengths", () => {
    expect(run(total, [[1], [2], [null], [3]], [[10], [20], [null], [30]])).toEqual([[140]]);
    expect(run(total, [[1, 2, 3]], [[1, 1, 1]])).toEqual([[6]]);
    expect(text0(run(total, [[1], [2]], [[1]]))).toBe("ys has 1 rows, xs 2: lists must be equally long");
    expect(text0(run(total, [[1], [2]], [[1], [null]]))).toBe("ys: row 2 is empty or 0");
  });

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

describe("the shop block", () => {
  const block: Range = [
    ["Units", "metric"],
    ["Handling minutes", 2],
    ["Guide gap", 50],
  ];
  const saws: Range = [
    ["Units", "inch", null, null, "comment"],
    ["Saw", "All", "Old", "New", null],
    ["Handling minutes", 3, null, 1, "with hoist"],
  ];

  it("feeds an argument that is not given, and gives way to one that is", () => {
    expect(run(fed, null, block)).toEqual([[2.05]]);
    expect(run(fed, 7, block)).toEqual([[7.05]]);
    expect(text0(run(fed, null, null))).toBe("minutes is empty or 0, and the shop block does not give it");
  });

  it("has a column per saw, filled from All, and a comment at the end", () => {
    expect(run(fed, null, saws, [["old"], ["NEW"]])).toEqual([[3.075], [1.075]]);
    expect(text0(run(fed, null, saws, "third"))).toBe('saw: "third" is not in the shop block; it names old, new');
    expect(text0(run(fed, null, saws))).toBe("saw is empty; the shop block names old, new");
    expect(text0(run(fed, 1, null, "old"))).toMatch(/without settings/);
  });

  it("is refused when it slid, holds an unknown label, one twice, or a value out of range", () => {
    expect(text0(run(fed, 1, block.slice(1)))).toMatch(/first row of the shop block must be "Units"/);
    expect(
      text0(
        run(fed, 1, [
          ["Units", "inch"],
          ["Handlng", 1],
        ]),
      ),
    ).toBe('settings: "Handlng" is not a label of the shop block');
    expect(
      text0(
        run(fed, 1, [
          ["Units", "inch"],
          ["Rate factor wood", 1],
        ]),
      ),
    ).toBe('settings: "Rate factor wood" names neither a cutting group nor one grade');
    expect(
      run(fed, 1, [
        ["Units", "inch"],
        ["Rate factor duplex and PH stainless", 1.1],
        ["Carbide life 4140", 5000],
        ["Bi-metal life DUPLEX AND PH STAINLESS", 900],
      ])[0]![0],
    ).toBeCloseTo(1.075, 9);
    expect(
      text0(
        run(fed, 1, [
          ["Units", "inch"],
          ["kerf", 0.06],
          ["Kerf ", 0.06],
        ]),
      ),
    ).toMatch(/stands twice/);
    expect(
      text0(
        run(fed, 1, [
          ["Units", "inch"],
          ["Availability", 1.2],
        ]),
      ),
    ).toBe("settings: Availability must be at most 1; it is 1.2");
    expect(
      text0(
        run(fed, 1, [
          ["Units", "inch"],
          ["Kerf", "thin"],
        ]),
      ),
    ).toBe("settings: Kerf is text, not a number");
    expect(
      text0(
        run(fed, 1, [
          ["Units", "inch"],
          ["Feed mode", "fast"],
        ]),
      ),
    ).toBe('settings: Feed mode must be "constant rate" or "constant feed"; it is "fast"');
    expect(
      text0(
        run(fed, 1, [
          ["Units", "inch", null],
          ["Kerf", 0.06, 0.07],
        ]),
      ),
    ).toMatch(/several value columns/);
  });
});

describe("a number of the other unit system in the shop block", () => {
  // Usual bands, common practice, no source: 27 mm = 1.06 in wide, 0.9 mm = 0.035 in thick, kerf 1.6 mm = 0.063 in; 250 MPa = 36 ksi; steel 7850 kg/m³ = 0.284 lb/in³.
  it.each([
    ["Band width", 1.06, 27],
    ["Band width", 3, 80],
    ["Band thickness", 0.035, 0.9],
    ["Band thickness", 0.063, 1.6],
    ["Kerf", 0.063, 1.6],
    ["Kerf", 0.12, 3],
    ["Band tension", 36, 250],
    ["Density", 0.284, 7850],
    ["Density", 0.063, 1740],
  ])(
    "%s %d in an inch block and %d in a metric one are read, and refused the other way round",
    (label, inch, metric) => {
      expect(
        run(fed, 1, [
          ["Units", "inch"],
          [label, inch],
        ])[0]![0],
      ).toBeTypeOf("number");
      expect(
        run(fed, 1, [
          ["Units", "metric"],
          [label, metric],
        ])[0]![0],
      ).toBeTypeOf("number");
      expect(
        text0(
          run(fed, 1, [
            ["Units", "inch"],
            [label, metric],
          ]),
        ),
      ).toMatch(new RegExp(`^settings: ${label} must be at most [\\d.]+ (in|ksi|lb/in³); it is `));
      expect(
        text0(
          run(fed, 1, [
            ["Units", "metric"],
            [label, inch],
          ]),
        ),
      ).toMatch(new RegExp(`^settings: ${label} must be at least [\\d.]+ (mm|MPa|kg/m³); it is `));
    },
  );

  it("is named with its label and the limits in the block's units, whatever the call's", () => {
    expect(
      text0(
        run(fed, 1, [
          ["Units", "inch"],
          ["Trim", "3 parsec"],
        ]),
      ),
    ).toBe('settings: Trim: do not know the length unit "parsec"; write ft, in, m, cm or mm');
    expect(
      text0(
        run(fed, 1, [
          ["Units", "inch"],
          ["Pitches stocked", "2-3"],
        ]),
      ),
    ).toMatch(/^settings: Pitches stocked: cannot read "2-3"/);
    expect(
      text0(
        run(fed, 1, [
          ["Units", "metric", null, null, null, null],
          ["Own material", "Pump bar", "4140", null, 0.284, null],
        ]),
      ),
    ).toBe("settings: Own material: Pump bar: the density must be from 1000 kg/m³ to 23000 kg/m³");
    expect(
      text0(
        run(fed, 1, [
          ["Units", "inch", null, null, null, null],
          ["Own material", "Pump bar", "not a grade", null, null, null],
        ]),
      ),
    ).toMatch(/^settings: Own material Pump bar: not a grade is not in the material table/);
  });
});

describe("own materials of the shop block", () => {
  const rate = catalogue.find((e) => e.name === "CUTRATE")!;
  const mass = catalogue.find((e) => e.name === "MATERIAL")!;
  const block: Range = [
    ["Units", "metric", null, null, null, null],
    ["Own material", "Pump bar", "4140", 0.8, null, 6.5],
    ["Own material", "Grey stuff", 304, null, 7950, null],
    ["Rate factor pump bar", 0.5, null, null, null, null],
  ];

  it("are found by name before the table, with the shop's own values", () => {
    const plain = call(
      rate,
      [[["flat 6x1"]], [["4140"]], [["bi-metal"]], null, null, null, [["inch"]]],
      new Memo(),
    )[0]![0] as number;
    const own = call(
      rate,
      [[["flat 6x1"]], [["pump bar"]], [["bi-metal"]], null, block.slice(0, 3), null, [["inch"]]],
      new Memo(),
    )[0]![0] as number;
    expect(own / plain).toBeCloseTo(0.8, 9);
    expect(
      call(mass, [[["GREY STUFF"]], [["density"]], block.slice(0, 3), [["metric"]]], new Memo())[0]![0],
    ).toBeCloseTo(7950, 6);
  });

  it("are refused by name when a value is wrong", () => {
    const wrong = (row: Cell[]) =>
      text0(call(mass, [[["x"]], [["density"]], [["Units", "metric", null, null, null, null], row], null], new Memo()));
    expect(wrong(["Own material", "X", "no such steel", null, null, null])).toMatch(/no such steel|not/);
    expect(wrong(["Own material", "X", "304", "fast", null, null])).toMatch(
      /Own material X: rate factor is text, not a number/,
    );
    expect(wrong(["Own material", null, "304", null, null, null])).toMatch(/needs a name/);
    expect(wrong(["Own material", "X", "304", 99, null, null])).toMatch(/from 0\.05 to 20/);
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
