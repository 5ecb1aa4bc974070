import { describe, expect, it } from "vitest";
import { call } from "../../../functions/bind/call";
import { catalogue } from "../../../functions/catalogue";
import { type Cell, type Range } from "../../../functions/kinds/cell";
import { Memo } from "../../../functions/bind/memo";
import { run, text0, fed } from "../bind/fixture";

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
