import { describe, expect, it } from "vitest";
import { call } from "../../../functions/bind/call";
import { catalogue } from "../../../functions/catalogue";
import { CellError, type Cell, type Range } from "../../../functions/kinds/cell";
import { slots } from "../../../functions/bind/slots";
import { Memo } from "../../../functions/bind/memo";

/** Calls a function by its arguments' names. */
function run(name: string, given: Readonly<Record<string, Cell | Range>>): Cell[][] {
  const e = catalogue.find((each) => each.name === name)!;
  const places = slots(e).map((s) => s.name);
  for (const key of Object.keys(given)) if (!places.includes(key)) throw new Error(`${name} has no ${key}`);
  return call(
    e,
    places.map((p): Range | null => {
      const value = given[p];
      return value === undefined ? null : Array.isArray(value) ? value : [[value as Cell]];
    }),
    new Memo(),
  );
}
const one = (name: string, given: Readonly<Record<string, Cell | Range>>): number => run(name, given)[0]![0] as number;
const text = (name: string, given: Readonly<Record<string, Cell | Range>>): string =>
  (run(name, given)[0]![0] as CellError).text;
const closeTo12 = (a: number, b: number) =>
  expect(Math.abs(a - b), `${a} ${b}`).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(a), Math.abs(b)));

/** The same shop, written in either system. */
const inchBlock: Range = [
  ["Units", "inch"],
  ["Hourly cost", 63],
  ["Set-up minutes", 15],
  ["Load minutes", 6],
  ["Handling minutes", 0.7],
  ["Blade change minutes", 12],
  ["Bi-metal price", 180],
  ["Bi-metal life", 6200],
  ["Kerf", 0.063],
  ["Trim", 0.5],
  ["Grip", 2.5],
  ["Stock length", "20 ft"],
  ["Material price", 0.6],
  ["Scrap price", 0.1],
  ["Density", 0.2836],
  ["Break-in area", 50],
  ["Maximum width", 20],
];
const metricBlock: Range = [
  ["Units", "metric"],
  ["Hourly cost", 63],
  ["Set-up minutes", 15],
  ["Load minutes", 6],
  ["Handling minutes", 0.7],
  ["Blade change minutes", 12],
  ["Bi-metal price", 180],
  ["Bi-metal life", 6200 * 6.4516],
  ["Kerf", 0.063 * 25.4],
  ["Trim", 12.7],
  ["Grip", 63.5],
  ["Stock length", 6096],
  ["Material price", 0.6 / 0.45359237],
  ["Scrap price", 0.1 / 0.45359237],
  ["Density", (0.2836 * 0.45359237) / 25.4 ** 3 / 1e-9],
  ["Break-in area", 50 * 6.4516],
  ["Maximum width", 508],
];

describe("a counted description in QUOTE", () => {
  it("12 pcs of a size are twelve cuts, not a stack of twelve cut at once", () => {
    const entry = catalogue.find((e) => e.name === "QUOTE")!;
    const block: Range = [
      ["Units", "inch"],
      ["Hourly cost", 72],
      ["Bi-metal price", 180],
      ["Bi-metal life", 9000],
      ["Stock length", "20 ft"],
    ];
    const cuts = (item: string) =>
      call(entry, [[[item]], [["bi-metal"]], [[12]], block, [["A36"]], [[8.5]], null, [["cuts"]]], new Memo())[0]![0];
    expect(cuts("12 pcs round 2")).toBe(12);
    expect(cuts("round 2")).toBe(12);
    expect(cuts("round 2 bundle 3x4")).toBe(1);
  });
});

describe("the same shop in inch and metric", () => {
  it("CUTCOST agrees to 1e-12, whatever system block and call are in", () => {
    const inch = { section: "round 7 in", rate: 2.14, hourlyCost: 63, price: 180, life: 6200, units: "inch" };
    const metric = { ...inch, rate: 2.14 * 6.4516, life: 6200 * 6.4516, units: "metric" };
    const all = (given: Readonly<Record<string, Cell | Range>>) =>
      run("CUTCOST", { ...given, show: "all" })[0] as number[];
    const wanted = all({ ...inch, settings: inchBlock });
    for (const got of [
      all({ ...inch, settings: metricBlock }),
      all({ ...metric, settings: inchBlock }),
      all({ ...metric, settings: metricBlock }),
    ])
      got.forEach((value, i) => closeTo12(value, wanted[i]!));
    closeTo12(
      wanted[0]!,
      wanted.slice(1).reduce((s, x) => s + x, 0),
    );
  });

  it("QUOTE agrees to 1e-12 in money and minutes, and converts sizes", () => {
    const given = {
      item: "round 7 in",
      blade: "bi-metal",
      quantity: 37,
      material: "4140",
      show: [
        [
          "price line",
          "minutes",
          "cuts",
          "bars",
          "time cost",
          "blade cost",
          "kerf cost",
          "ends cost",
          "set-up",
          "rate",
          "remnant",
          "mass",
        ],
      ],
    } as const;
    const inch = run("QUOTE", { ...given, length: 11.5, settings: inchBlock })[0] as number[];
    const metric = run("QUOTE", { ...given, length: 11.5 * 25.4, settings: metricBlock })[0] as number[];
    const mixed = run("QUOTE", { ...given, length: '11-1/2"', settings: metricBlock, units: "inch" })[0] as number[];
    inch.forEach((value, i) => closeTo12(mixed[i]!, value));
    inch.slice(0, 9).forEach((value, i) => closeTo12(metric[i]!, value));
    closeTo12(metric[9]!, inch[9]! * 6.4516);
    expect(metric[10]!).toBeCloseTo(inch[10]! * 25.4, 6);
    closeTo12(metric[11]!, inch[11]! * 0.45359237);
  });

  it("BARS takes lengths in mixed units and kerf, trim, grip, stock length from the block", () => {
    expect(run("BARS", { stock: "6 m", piece: '4"', quantity: 100, show: "all", units: "metric" })[0]).toEqual([
      2,
      59,
      6000 - 41 * 101.6,
      expect.closeTo((100 * 101.6) / 12000, 12),
    ]);
    expect(one("BARS", { stock: "20 ft", piece: 11.5, quantity: 100, settings: inchBlock })).toBe(
      one("BARS", { piece: 292.1, quantity: 100, settings: metricBlock }),
    );
    expect(
      one("BARS", { stock: 6000, piece: 100, quantity: 120, kerf: 1.6, trim: 10, grip: 60, units: "metric" }),
    ).toBe(3);
  });
});

describe("a column of lines", () => {
  it("a bundle of 3 × 4 and 100 pieces is 9 cuts of 12 bars", () => {
    expect(
      run("QUOTE", {
        item: "round 2 in bundle 3x4",
        blade: "bi-metal",
        quantity: 100,
        material: "A36",
        length: 8.5,
        settings: inchBlock,
        show: [["cuts", "bars"]],
      }),
    ).toEqual([[9, 12]]);
  });

  it("a line that cannot be quoted leaves the others alone, and says why", () => {
    const got = run("QUOTE", {
      item: [["round 7"], ["round 7"], ["round"], ["round 30"], ["round 7"]],
      blade: [["bi-metal"], ["carbide"], ["bi-metal"], ["bi-metal"], ["bi-metal"]],
      quantity: [[5], [5], [5], [5], [null]],
      material: "4140",
      length: 12,
      settings: inchBlock,
    });
    expect(typeof got[0]![0]).toBe("number");
    const texts = got.slice(1).map((r) => (r[0] as CellError).text);
    expect(texts[0]).toBe('settings give no "Carbide price"');
    expect(texts[1]).toMatch(/^item/);
    expect(texts[2]).toMatch(/this saw takes 20 in/);
    expect(texts[3]).toBe("quantity is empty or 0");
  });

  it("5,000 lines in one call give what single calls give", () => {
    const items = Array.from({ length: 5000 }, (_, i): Cell[] => [`round ${2 + (i % 40) / 8}`]);
    const quantities = items.map((_, i): Cell[] => [1 + (i % 90)]);
    const given = { blade: "bi-metal", material: "4140", length: 12, settings: inchBlock };
    const all = run("QUOTE", { ...given, item: items, quantity: quantities });
    expect(all.length).toBe(5000);
    expect(all.flat().every((c) => typeof c === "number")).toBe(true);
    for (const i of [0, 1, 777, 4999])
      expect(all[i]![0]).toBe(one("QUOTE", { ...given, item: items[i]![0]!, quantity: quantities[i]![0]! }));
  });

  it("a material of the shop's own saw column is charged from its column", () => {
    const saws: Range = [
      ["Units", "inch", null, null],
      ["Saw", "All", "old", "new"],
      ["Hourly cost", null, 50, 90],
      ["Bi-metal price", 180, null, null],
      ["Bi-metal life", 6200, null, null],
      ["Stock length", 240, null, null],
    ];
    const [old, young] = run("QUOTE", {
      item: "round 7",
      blade: "bi-metal",
      quantity: 5,
      material: "4140",
      length: 12,
      settings: saws,
      saw: [["old"], ["new"]],
      show: "time cost",
    }).flat() as number[];
    closeTo12(young! / old!, 90 / 50);
  });
});

describe("money of blades", () => {
  it("the three answers to what a saw hour is worth, own check values: 200, 547.58, 831.12", () => {
    const values = run("BREAKEVEN", {
      current: [[120, 30000, 40]],
      offer: [[null, 50000, 55]],
      sawHourValue: [[0], [60], [108.9473684]],
      change: 10,
    }).flat();
    expect(values).toEqual([expect.closeTo(200, 6), expect.closeTo(547.5757576, 6), expect.closeTo(831.1244019, 5)]);
  });

  it("PAYBACK says why it is never, in a sentence with the hours", () => {
    expect(
      text("PAYBACK", {
        current: [[120, 30000, 40]],
        offer: [[260, 50000, 55]],
        sawHourValue: 60,
        oneOffCost: 500,
        areaPerMonth: 20000,
        change: 10,
      }),
    ).toBe("never as things are: the offer frees 2.3172 h a month, and work waits for 0 h of them");
  });

  it("OFFERS gives a ranked table under its headings, labels across or down", () => {
    const across: Range = [
      ["name", "price", "life", "rate"],
      ["A", 120, 30000, 40],
      ["B", 260, 50000, 55],
    ];
    const down: Range = [
      ["rate", 40, 55],
      ["life", 30000, 50000],
      ["price", 120, 260],
      ["name", "A", "B"],
    ];
    const got = run("OFFERS", { offers: across, sawHourValue: 60, areaPerMonth: 20000, change: 10 });
    expect(got[0]).toEqual([
      "rank",
      "name",
      "cost per area",
      "cost per month",
      "saving",
      "break even price",
      "best from",
      "best to",
      "safety margin",
      "takes the lead",
      "months of supply",
      "note",
    ]);
    expect(got[1]!.slice(0, 2)).toEqual([1, "B"]);
    expect(got[1]!.slice(6)).toEqual([
      "10.357 per hour",
      "no limit",
      "stays first down to life 24200, or rate 41.8",
      "",
      "",
      "",
    ]);
    expect(run("OFFERS", { offers: down, sawHourValue: 60, areaPerMonth: 20000, change: 10 })).toEqual(got);
  });

  it("OFFERS takes a first column with gaps, and a bad row spoils its own offer only", () => {
    const table: Range = [
      ["name", "price", "life", "rate"],
      [null, 120, 30000, 40],
      ["B", 260, null, 55],
    ];
    expect(run("OFFERS", { offers: table, sawHourValue: 60 })[2]!.slice(0, 3)).toEqual(["", "B", ""]);
    expect(run("OFFERS", { offers: table, sawHourValue: 60 })[2]!.at(-1)).toBe("not ranked: B gives no life");
    expect(text("OFFERS", { offers: [table[0]!, table[2]!], sawHourValue: 60 })).toBe("offers: B gives no life");
    const dear: Range = [table[0]!, ["A", 120, 30000, 40], ["vendor B", "€385,00", 30000, 55]];
    expect(run("OFFERS", { offers: dear, sawHourValue: 60 })[2]!.at(-1)).toBe(
      "not ranked: price of vendor B is text, €385,00: write 385",
    );
    expect(run("OFFERS", { offers: table.slice(0, 2), sawHourValue: 60 })[1]![1]).toBe("row 2");
  });

  it("BESTRATE refuses an exponent that shows no fall, and a saw hour worth nothing", () => {
    expect(text("BESTRATE", { blade: [[180, 600, 3]], exponent: -1, sawHourValue: 60 })).toMatch(
      /^exponent must be at least 0.001: these trials do not show life falling/,
    );
    expect(text("BESTRATE", { blade: [[180, 600, 3]], exponent: 3, sawHourValue: 0 })).toMatch(
      /^saw hour value is empty or 0/,
    );
  });
});

describe("time", () => {
  it("WORKLOAD says by how much the saws are overloaded", () => {
    expect(
      text("WORKLOAD", { minutes: [[30], [15]], quantities: [[80], [40]], hours: 45, show: "expected wait" }),
    ).toBe("overloaded by 5 h in the period: the wait grows without end");
    expect(one("WORKLOAD", { minutes: [[30], [15]], quantities: [[80], [40]], hours: 45 })).toBeCloseTo(50 / 45, 12);
  });

  it("THROUGHPUT is a shift's pieces", () => {
    expect(one("THROUGHPUT", { minutes: 20, hours: 8, availability: 0.9, piecesPerCut: 12 })).toBe(21 * 12);
  });
});

describe("what an attack found", () => {
  const block = (...rows: Range): Range => [["Units", "inch", "inch"], ["Saw", "a", "b"], ...rows];
  const cut = { section: "round 7", material: "4140", blade: "bi-metal" };
  it("a refused saw repeats no more than 60 characters of what was typed", () => {
    expect(text("CUTRATE", { ...cut, settings: block(), saw: "x".repeat(1500) }).length).toBeLessThan(160);
  });
  it("a cell of 500 pitches is refused by its label", () => {
    const settings: Range = [
      ["Units", "inch"],
      ["Pitches stocked", Array<string>(500).fill("3/4").join(",")],
    ];
    expect(text("CUTRATE", { ...cut, settings })).toMatch(/Pitches stocked.*500 pitches; at most 40/);
  });
  it("the largest number of a cell is no Infinity in a sentence", () => {
    expect(text("CUTTIME", { section: "round 7", rate: 1e308 })).toBe(
      "rate must be at most 155000 in²/min; it is beyond all numbers",
    );
  });
  it("an idle power that leaves nothing is refused by its label, and is no rate of 0", () => {
    const settings: Range = [
      ["Units", "inch"],
      ["Motor power", 1],
      ["Idle power", 2],
    ];
    expect(text("CUTRATE", { ...cut, settings })).toMatch(/Idle power, 2 hp, leaves nothing of Motor power, 1 hp/);
  });
});
