import { describe, expect, it } from "vitest";
import { catalogue } from "../../../functions/catalogue";
import { CellError, type Cell, type Range } from "../../../functions/kinds/cell";
import { run, text0 } from "../bind/fixture";

/** The table of TUNE under a shop block, and a log beside it. */

const byName = (name: string) => catalogue.find((e) => e.name === name)!;
const rate = (blade: string, saw: Cell, block: Range, show: string, grade: Cell = "304"): Cell =>
  run(byName("CUTDATA"), "round 4", grade, blade, show, null, block, saw)[0]![0]!;
const column = (...cells: readonly Cell[]): Range => cells.map((c) => [c]);

const twoSaws: Range = [
  ["Units", "inch", null, null],
  ["Saw", "A", "B", null],
  ["Motor power", 10, 20, "hp"],
];
const tuned: Range = [
  ["Rate factor", 0.9, "all 12 cuts, 2 groups; for groups without cuts of their own", null],
  ["Rate factor austenitic stainless, bi-metal", 0.8, "7 cuts, 1 held by the motor", null],
  ["Rate spread austenitic stainless, bi-metal", 1.1, "low to high: about 80 % of your own cuts", null],
];
const plain = (saw: Cell, blade = "bi-metal", grade: Cell = "304"): number =>
  rate(blade, saw, twoSaws, "rate", grade) as number;

describe("rows of TUNE in a block of two saws", () => {
  const block = [...twoSaws, [null, null, null, null], ...tuned];
  it.each(["A", "B"])("hold for every saw: %s", (saw) => {
    expect(rate("bi-metal", saw, block, "rate")).toBeCloseTo(0.8 * plain(saw), 9);
    expect(rate("bi-metal", saw, block, "rate low")).toBeCloseTo((0.8 * plain(saw)) / 1.1, 9);
    expect(rate("bi-metal", saw, block, "rate high")).toBeCloseTo(0.8 * plain(saw) * 1.1, 9);
  });
  it("hold for their class of blade only: another takes the general factor and keeps its own low and high", () => {
    expect(rate("carbide", "A", block, "rate")).toBeCloseTo(0.9 * plain("A", "carbide"), 9);
    const spread =
      (rate("carbide", "A", block, "rate high") as number) / (rate("carbide", "A", block, "rate") as number);
    expect(spread).toBeGreaterThan(1.15);
    expect(rate("bi-metal", "A", block, "rate", "4140")).toBeCloseTo(0.9 * plain("A", "bi-metal", "4140"), 9);
  });
  it("are said: from how many cuts, and whose 80 % low and high are", () => {
    expect(rate("bi-metal", "A", block, "basis")).toContain(
      "Rate factor 0.8 from 7 own cuts. Low to high: about 80 % of your own cuts, by the Rate spread of the shop block.",
    );
    expect(rate("carbide", "A", block, "basis")).toContain(
      "Rate factor 0.9 from 12 own cuts of other groups or blades. Low to high: judgement",
    );
    expect(rate("bi-metal", "A", twoSaws, "basis")).not.toContain("own cut");
  });
  it("typed for both classes, by grade, or for one saw beside another, mean what they did", () => {
    const of = (...row: readonly Cell[]): Range => [...twoSaws, row];
    expect(rate("carbide", "A", of("Rate factor austenitic stainless", 0.7, null, null), "rate")).toBeCloseTo(
      0.7 * plain("A", "carbide"),
      9,
    );
    expect(rate("bi-metal", "B", of("Rate factor 304, bi-metal", 0.7, null, null), "rate")).toBeCloseTo(
      0.7 * plain("B"),
      9,
    );
    expect(rate("bi-metal", "B", of("Rate factor", 0.7, 0.6, null), "rate")).toBeCloseTo(0.6 * plain("B"), 9);
    const grade = [...block, ["Rate factor 304", 0.75, null, null]];
    expect(rate("bi-metal", "B", grade, "rate")).toBeCloseTo(0.75 * plain("B"), 9);
  });
});

describe("a typed and a tuned row that meet", () => {
  const met = (...row: readonly Cell[]): string =>
    (rate("bi-metal", "A", [twoSaws[0]!, twoSaws[1]!, row, ...tuned], "rate") as CellError).text;
  it("are refused by name and row, and it is said which to delete", () => {
    expect(met("Rate factor", 0.8, null, null)).toBe(
      'settings: "Rate factor" stands twice in the shop block, in rows 3 and 4; TUNE gives one of them: delete the one that is typed',
    );
    expect(met("Rate factor austenitic stainless", 0.8, null, null)).toBe(
      'settings: "Rate factor austenitic stainless" and "Rate factor austenitic stainless, bi-metal" both stand in the shop block, in rows 3 and 5; TUNE gives one of them: delete the one that is typed',
    );
  });
  it("do not meet where the typed one has no value, or holds for another class or grade", () => {
    for (const row of [
      ["Rate factor", null, null, null],
      ["Rate factor austenitic stainless, carbide", 0.8, null, null],
      ["Rate spread 316", 1.2, null, null],
    ])
      expect(rate("bi-metal", "A", [twoSaws[0]!, twoSaws[1]!, row, ...tuned], "rate")).toBeTypeOf("number");
  });
  it("another label that stands twice is named with its rows; a spread under 1 is refused", () => {
    expect(text0([[rate("bi-metal", "A", [...twoSaws, ["Motor power", 1, 2, null]], "rate")]])).toBe(
      'settings: "Motor power" stands twice in the shop block, in rows 3 and 4',
    );
    expect(text0([[rate("bi-metal", "A", [...twoSaws, ["Rate spread", 0.9, null, null]], "rate")]])).toMatch(
      /Rate spread must be at least 1/,
    );
  });
});

describe("a log below the block of a two-saw sheet", () => {
  const shop: Range = [
    ["Units", "inch", null, null],
    ["Saw", "A", "B", null],
    ["Hourly cost", 70, 80, null],
    ["Stock length", "20 ft", "20 ft", null],
    ["Bi-metal price", 180, 180, null],
    ["Bi-metal life", 6000, 6000, null],
  ];
  const log = {
    section: column("round 4", null, "round 5", "rund 3", "flat 6x1", "round 6", "round 3", null),
    material: column("304", null, "304", "304", "304", "316", "304", null),
    minutes: column(7.9, null, "twelve", 5, 3.1, 17.5, new CellError("#N/A"), null),
    saw: column("A", null, "B", "A", "B", null, "A", null),
  };
  const table = run(byName("TUNE"), log.section, log.material, "bi-metal", log.minutes, null, null, shop, log.saw);
  const filled = Array.from({ length: 50 }, (_, i): Cell[] => [0, 1, 2, 3].map((c) => table[i]?.[c] ?? null));
  const quote = (block: Range, show: string): Cell =>
    run(byName("QUOTE"), "round 4", "bi-metal", 20, block, "304", 6, "A", show)[0]![0]!;

  it("tunes on what is right, names what is not, row by row, and quotes go on calculating", () => {
    expect(table[0]![2]).toBe(
      'all 2 cuts, 1 group; for groups without cuts of their own; row 3 left out: minutes is text, not a number; row 4 left out: unknown word "rund"; did you mean "round"?; row 6 left out: saw is empty; the shop block names a, b; row 7 left out: minutes is #N/A',
    );
    expect(quote([...shop, ...filled], "price line")).toBeTypeOf("number");
    expect(quote([...shop, ...filled], "read as")).toMatch(/Rate factor 0\.\d+ from 2 own cuts$/);
    expect(quote(shop, "read as")).not.toContain("Rate factor");
    expect(quote([...shop, ...filled], "minutes")).not.toBe(quote(shop, "minutes"));
  });
  it("with nothing right in it gives a factor of 1, and no error", () => {
    const none = run(byName("TUNE"), log.section, "unobtainium", "bi-metal", log.minutes, null, null, shop, log.saw);
    expect(none.map((r) => r.slice(0, 2))).toEqual([["Rate factor", 1]]);
    expect(none[0]![2]).toMatch(/^no usable cut in the log: the model as it stands; row 1 left out: /);
    expect(run(byName("TUNE"), column(null, null), "304", "bi-metal", column(null, null))[0]!.slice(0, 2)).toEqual([
      "Rate factor",
      1,
    ]);
  });
});
