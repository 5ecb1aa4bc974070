import { describe, expect, it } from "vitest";
import { catalogue } from "../../functions/catalogue";
import { parseCall } from "../../functions/bind/parseCall";
import { call } from "../../functions/bind/call";
import { CellError, type Cell } from "../../functions/kinds/cell";
import { Memo } from "../../functions/bind/memo";
import { pickSaw, readShopBlock } from "../../functions/shop/block";
import { shopLabels } from "../../functions/shop/labels";
import { defaultShop } from "../../src/shop/defaultShop";
import { addressOf } from "../../functions/formula/cellAddress";
import { absolute, block, freeName, shown } from "../../taskpane/sheet/address";
import { findFunctions } from "../../taskpane/views/findFunctions";
import { outlinePath } from "../../taskpane/views/outlinePath";
import { readSize } from "../../taskpane/sheet/readings";
import { rowColumns } from "../../taskpane/sheet/rowColumns";
import { filled, mostRows, rowFormula } from "../../taskpane/sheet/rowFormula";
import type { Selection, Value } from "../../taskpane/sheet/sheet";
import { shopCells } from "../../taskpane/sheet/shopCells";
import { Store, firstState } from "../../taskpane/sheet/store";
import { hostileTexts } from "./injection";

describe("addresses", () => {
  it("are those of the sheet (by definition)", () => {
    expect([
      addressOf(0, 0),
      addressOf(6, 25),
      addressOf(6, 26),
      addressOf(0, 701),
      addressOf(1_048_575, 16_383),
    ]).toEqual(["A1", "Z7", "AA7", "ZZ1", "XFD1048576"]);
    const at = { sheet: "Bill's list", row: 4, column: 2 };
    expect([block(at), block(at, 3, 2), shown(at), absolute(at, 3, 2)]).toEqual([
      "C5",
      "C5:D7",
      "Bill's list!C5",
      "'Bill''s list'!$C$5:$D$7",
    ]);
  });

  it("a name that is taken gets a number; names know no case", () => {
    expect([freeName("Shop", []), freeName("Shop", ["shop"]), freeName("Shop", ["SHOP", "Shop_2"])]).toEqual([
      "Shop",
      "Shop_2",
      "Shop_3",
    ]);
  });
});

describe("functions are found", () => {
  const first = (query: string): string | undefined => findFunctions(catalogue, query)[0]?.name;
  it.each([
    ["how long", "CUTTIME"],
    ["minutes", "CUTTIME"],
    ["which blade", "PITCH"],
    ["how many teeth per inch", "PITCH"],
    ["blade offer", "OFFERS"],
    ["CUTRATE", "CUTRATE"],
    ["=SAW.CUTRATE", "CUTRATE"],
    ["cutr", "CUTRATE"],
    ["band speed", "CUTDATA"],
    ["what should i change", "CUTCHECK"],
    ["how many bars", "BARS"],
    ["weight", "MASS"],
    ["is it dangerous", "MATERIAL"],
    ["which version", "VERSION"],
    ["how many pieces", "THROUGHPUT"],
  ])("%s: %s", (query, name) => {
    expect(first(query)).toBe(name);
  });

  it("by every one of their own questions, among the first three", () => {
    const lost = catalogue.flatMap((e) =>
      e.asks.filter((ask) => !findFunctions(catalogue, ask).slice(0, 3).includes(e)).map((ask) => `${e.name}: ${ask}`),
    );
    expect(lost).toEqual([]);
  });

  it("all of them when nothing is typed; none for words nobody uses", () => {
    expect(findFunctions(catalogue, "  ")).toEqual(catalogue);
    expect(findFunctions(catalogue, "xyzzy")).toEqual([]);
  });
});

const selection = (
  values: readonly (readonly Value[])[],
  column: number,
  more: Partial<Selection> = {},
): Selection => ({
  sheet: "S",
  row: values.length - 1,
  column,
  rows: 1,
  columns: 1,
  areas: 1,
  value: "",
  formula: "",
  around: { top: 0, values },
  ...more,
});
const entry = (name: string) => catalogue.find((e) => e.name === name)!;
const inch = { units: "inch", shop: undefined } as const;

describe("the formula for a row", () => {
  const sheet = [
    ["title", "", "", "", "", ""],
    ["size", "material", "blade", "pieces", "rate in²/min", ""],
    ["round 7", "17-4PH", "bi-metal", 12, 2.1, ""],
  ];

  it("takes the row's own cells, by what they read as", () => {
    expect(rowFormula(entry("CUTRATE"), selection([["17-4PH", "round 7", "carbide", ""]], 3), new Map(), inch)(0)).toBe(
      "=SAW.CUTRATE(B1,A1,C1)",
    );
  });

  it("tells numbers apart by the heading above", () => {
    expect([...rowColumns(selection(sheet, 5), "inch")]).toEqual([
      ["section", 0],
      ["material", 1],
      ["blade", 2],
      ["quantity", 3],
      ["rate", 4],
    ]);
    expect(rowFormula(entry("CUTTIME"), selection(sheet, 5), new Map(), inch)(2)).toBe("=SAW.CUTTIME(A3,E3)");
  });

  it("falls back on what the pane holds, then on the example; text in a formula is quoted", () => {
    expect(
      rowFormula(
        entry("CUTRATE"),
        selection([["round 7", ""]], 1),
        new Map([
          ["material", 'a"b'],
          ["blade", "carbide"],
        ]),
        inch,
      )(0),
    ).toBe('=SAW.CUTRATE(A1,"a""b","carbide")');
    expect(rowFormula(entry("CUTTIME"), selection([[""]], 0), new Map(), inch)(0)).toBe('=SAW.CUTTIME("round 7",2.14)');
  });

  it("never points at the cell it goes into", () => {
    expect(rowFormula(entry("AREA"), selection([["round 7"]], 0), new Map(), inch)(0)).toBe('=SAW.AREA("round 7")');
  });

  it("says metric, and the shop block that the pane has inserted", () => {
    expect(
      rowFormula(entry("CUTRATE"), selection([["round 7", "304", "carbide", ""]], 3), new Map(), {
        units: "metric",
        shop: "Shop",
      })(0),
    ).toBe('=SAW.CUTRATE(A1,B1,C1,,Shop,,"metric")');
  });

  it("is for every function one that gives no error on a row of an order list", () => {
    for (const e of catalogue) {
      const formula = rowFormula(e, selection([[""]], 0), new Map(), inch)(0);
      const { name, args } = parseCall(formula);
      expect(name).toBe(e.name);
      expect(
        call(e, args, new Memo())
          .flat()
          .filter((c) => c instanceof CellError),
        formula,
      ).toEqual([]);
    }
  });

  it("keeps a hostile size inside its quotes", () => {
    for (const text of hostileTexts) {
      const formula = rowFormula(entry("AREA"), selection([[""]], 0), new Map([["section", `${text}"&A1&"`]]), inch)(0);
      expect(formula).toBe(`=SAW.AREA("${`${text}"&A1&"`.replace(/"/g, '""')}")`);
    }
  });

  it("goes down a column, one formula a row", () => {
    const at = selection([["round 7", ""]], 1, { rows: 3 });
    expect(filled(at, rowFormula(entry("AREA"), at, new Map(), inch))).toEqual([
      [{ formula: "=SAW.AREA(A1)" }],
      [{ formula: "=SAW.AREA(A2)" }],
      [{ formula: "=SAW.AREA(A3)" }],
    ]);
  });

  it.each([
    [{ areas: 2 }, /Several areas/],
    [{ columns: 2 }, /more than one column/],
    [{ rows: mostRows + 1 }, /Select at most/],
  ])("says plainly why it cannot: %j", (more, says) => {
    expect(filled(selection([[""]], 0, more), () => "=1")).toMatch(says);
  });
});

describe("the shop block, ready-made", () => {
  const cells = (units: "inch" | "metric"): Cell[][] =>
    shopCells(units).map((row) => row.map((c) => (typeof c === "number" ? c : "text" in c ? c.text : c.formula)));

  it.each(["inch", "metric"] as const)("begins with Units and is read as every default: %s", (units) => {
    const rows = cells(units);
    expect(rows[0]!.slice(0, 2)).toEqual(["Units", units]);
    expect(rows.slice(1).map(([label]) => label)).toEqual(shopLabels.map((l) => l.label));
    expect(pickSaw(readShopBlock(rows), undefined)).toEqual(defaultShop);
  });
});

describe("the outline as a path", () => {
  /** Points along the path, arcs by their chords' ends only: enough for corners and extents. */
  const numbers = (d: string): number[] => d.match(/-?\d+(?:\.\d+)?/g)!.map(Number);
  const path = (size: string, wide = 1): string => {
    const read = readSize(size, "inch");
    if (!("value" in read)) throw new Error(read.problem);
    return outlinePath(read.value.outline!, wide);
  };

  it("is one loop for a solid, two for a tube, each closed", () => {
    expect(path("flat 6x1").match(/Z/g)).toHaveLength(1);
    expect(path("tube 6x0.5").match(/Z/g)).toHaveLength(2);
  });

  it("is four quarter arcs of the radius for a round (definition)", () => {
    const d = path("round 2");
    expect(d.match(/A25\.4 25\.4 0 0 [01]/g)).toHaveLength(4);
    expect(d).not.toMatch(/NaN/);
  });

  it("is as wide and as high as the flat, and stretched by a mitre", () => {
    const spans = (d: string): number[] => {
      const n = numbers(d);
      return [0, 1].map((k) => {
        const xs = n.filter((_, i) => i % 2 === k);
        return Math.max(...xs) - Math.min(...xs);
      });
    };
    expect(spans(path("flat 6x1"))).toEqual([152.4, 25.4]);
    expect(spans(path("flat 6x1", 2))).toEqual([304.8, 25.4]);
  });
});

describe("the store", () => {
  it("tells of what changed, and not after the end", () => {
    const store = new Store(firstState);
    let told = 0;
    const stop = store.watch(["units"], () => {
      told += 1;
    });
    store.set({ section: "round 3" });
    expect(told).toBe(1);
    store.set({ units: "metric" });
    expect(told).toBe(2);
    stop();
    store.set({ units: "inch" });
    expect(told).toBe(2);
  });
});
