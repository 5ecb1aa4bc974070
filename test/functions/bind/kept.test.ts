import { describe, expect, it } from "vitest";
import { call } from "../../../functions/bind/call";
import { slots } from "../../../functions/bind/slots";
import { catalogue } from "../../../functions/catalogue";
import { CellError, type Cell, type Range } from "../../../functions/kinds/cell";
import { Memo } from "../../../functions/bind/memo";
import { solvedOnce } from "../../../src/cutting/solvedOnce";
import { work } from "../../cutting/fixture";

/** Kept blocks and solved cuts: whatever was kept, an answer is the one that nothing kept gives. */

type Given = Readonly<Record<string, Range>>;
const ask = (name: string, given: Given, memo: Memo): Cell[][] => {
  const entry = catalogue.find((e) => e.name === name)!;
  return call(
    entry,
    slots(entry).map((s) => given[s.name] ?? null),
    memo,
  );
};
const block = (...rows: readonly (readonly Cell[])[]): Range => [
  ["Units", "inch"],
  ["Hourly cost", 72],
  ["Bi-metal price", 180],
  ["Bi-metal life", 9000],
  ["Stock length", "20 ft"],
  ...rows,
];
const line = (settings: Range, size: Cell = "round 4", grade: Cell = "A36"): Given => ({
  item: [[size]],
  blade: [["bi-metal"]],
  quantity: [[20]],
  settings,
  material: [[grade]],
  length: [[12]],
});
const cut = (settings: Range, size: Cell = "round 4"): Given => ({
  section: [[size]],
  material: [["A36"]],
  blade: [["bi-metal"]],
  settings,
  show: [["all"]],
});

/** Blocks that differ in one cell each, in a value, a type, a place, a label, the units or a saw. */
const blocks: readonly Range[] = [
  block(),
  block(["Motor power", 2]),
  block(["Motor power", 2.5]),
  block(["Motor power", "2"]),
  block(["Motor power", null]),
  block(["Idle power", 2]),
  block(["Maximum feed", 2]),
  block([null, null], ["Motor power", 2]),
  block(["Rate factor", 1.5]),
  block(["Rate factor A36", 1.5]),
  block(["Coolant", "dry"]),
  block(["Own material", "A36 ", "304"]),
  [["Units", "metric"], ...block().slice(1)],
  block(["Motor power", true]),
  block(["Motor power", -2]),
  block().map((row) => [...row, "a note"]),
];

describe("what is kept is never stale", () => {
  it("two workbooks in one host: their blocks in turn, in any order, warm as cold", () => {
    const memo = new Memo();
    for (let round = 0; round < 3; round += 1)
      for (let i = 0; i < blocks.length; i += 1) {
        const settings = blocks[(i * 5 + round) % blocks.length]!;
        for (const [name, given] of [
          ["QUOTE", line(settings)],
          ["CUTDATA", cut(settings)],
          ["CUTRATE", cut(settings)],
          ["CUTRATE", cut(settings, "tube 6x0.5")],
        ] as const)
          expect(ask(name, given, memo), `${name} ${JSON.stringify(settings)}`).toEqual(ask(name, given, new Memo()));
      }
  });

  it("the answers of the blocks do differ: nothing here passes by standing still", () => {
    const memo = new Memo();
    const rates = blocks.map((settings) => JSON.stringify(ask("CUTDATA", cut(settings), memo)));
    expect(new Set(rates).size).toBeGreaterThan(9);
  });

  it("a block whose cells are changed where they stand is read again", () => {
    const memo = new Memo();
    const settings = block(["Maximum feed", 2]).map((row) => [...row]);
    const first = ask("CUTDATA", cut(settings), memo);
    settings[5]![1] = 0.5;
    const second = ask("CUTDATA", cut(settings), memo);
    expect(second).not.toEqual(first);
    expect(second).toEqual(ask("CUTDATA", cut(block(["Maximum feed", 0.5])), new Memo()));
    settings[5]![1] = 2;
    expect(ask("CUTDATA", cut(settings), memo)).toEqual(first);
  });

  it("cells of another type, or split otherwise between neighbours, are another block", () => {
    const memo = new Memo();
    const say = (settings: Range) => ask("CUTRATE", cut(settings), memo)[0]![0];
    const refused = say(block(["Motor power", "5"]));
    expect(refused).toBeInstanceOf(CellError);
    expect(say(block(["Motor power", 5]))).toBeTypeOf("number");
    expect(say(block(["Motor power", "5"]))).toEqual(refused);
    expect(say(block(["Coolant", "dry", "x"]))).not.toEqual(say(block(["Coolant", "d", "ryx"])));
  });

  it("an own material of one block is not the one of the other", () => {
    const memo = new Memo();
    const own = (factor: number) => line(block(["Own material", "house", "304", factor]), "round 4", "house");
    const [slow, fast] = [own(0.5), own(2)].map((given) => ask("QUOTE", given, memo)[0]![0] as number);
    expect(slow).toBeGreaterThan(fast!);
    expect(ask("QUOTE", own(0.5), memo)[0]![0]).toBe(slow);
    expect(ask("QUOTE", line(block(), "round 4", "house"), memo)[0]![0]).toBeInstanceOf(CellError);
  });

  it("rows printed once in a call are rows of their own", () => {
    const given = { ...cut(block()), section: [["round 4"], ["round 4"]] };
    const [first, second] = ask("CUTDATA", given, new Memo());
    expect(first).toEqual(second);
    expect(first).not.toBe(second);
  });

  it("a block too long to keep is read each time, and right", () => {
    const memo = new Memo();
    const long = (power: number): Range => [...block(["Motor power", power]), ...Array(9000).fill([null, null])];
    const rates = [1, 2, 1].map((power) => ask("CUTRATE", cut(long(power)), memo)[0]![0]);
    expect(rates[0]).toBe(rates[2]);
    expect(rates[0]).not.toBe(rates[1]);
  });
});

describe("what is kept is bounded", () => {
  const size = (memo: Memo): number => {
    const { kept } = memo as unknown as { readonly kept: ReadonlyMap<string, ReadonlyMap<string, { size: number }>> };
    let most = 0;
    for (const ways of kept.values()) for (const map of ways.values()) most = Math.max(most, map.size);
    return most;
  };

  it("100,000 different cells and as many solved things: never more than the bound, each right", () => {
    const memo = new Memo();
    let most = 0;
    for (let i = 0; i < 100_000; i += 1) {
      expect(memo.get("cell", "", `cell ${i}`, () => i) + memo.solved("cut", [{}, i], () => i)).toBe(2 * i);
      if (i % 500 === 0) most = Math.max(most, size(memo));
    }
    expect(most).toBeLessThanOrEqual(4000);
  });

  it("5,000 different sizes and blocks in a small cache: answers as from none", () => {
    const memo = new Memo(50);
    for (let i = 0; i < 5000; i += 1) {
      const given = {
        section: [[`round ${1 + i / 1000}`]],
        rate: [[2]],
        settings: block(["Maximum feed", 1 + i / 5000]),
      };
      const [[warm]] = ask("CUTTIME", given, memo) as [[number]];
      if (i % 250 === 0) expect(ask("CUTTIME", given, new Memo())).toEqual([[warm]]);
    }
    expect(size(memo)).toBeLessThanOrEqual(200);
  });
});

describe("solved once", () => {
  it("asks again where the material, the class, the pitch, the shop or the question is another", () => {
    const memo = new Memo();
    let asked = 0;
    const one = { ...work("round 4", "A36"), pitch: undefined };
    const section = {
      ...one.section,
      solved: <T>(...[what, by, solve]: [string, readonly unknown[], () => T]) =>
        memo.solved(what, [one, ...by], solve),
    };
    const times = (what: string, part: object) => {
      const before = asked;
      solvedOnce(what, { ...one, section, ...part }, () => (asked += 1));
      return asked - before;
    };
    expect(times("rate", {})).toBe(1);
    expect(times("rate", {})).toBe(0);
    expect(times("data", {})).toBe(1);
    expect(times("rate", { material: work("round 4", "304").material })).toBe(1);
    expect(times("rate", { blade: "carbide" })).toBe(1);
    expect(times("rate", { pitch: { text: "3/4" } })).toBe(1);
    expect(times("rate", { shop: { ...one.shop } })).toBe(1);
    expect(times("rate", {})).toBe(0);
  });

  it("keeps no refusal, and solves each time for a section that keeps nothing", () => {
    const memo = new Memo();
    const fail = () => {
      throw new Error("refused");
    };
    expect(() => memo.solved("a", [1], fail)).toThrow("refused");
    expect(memo.solved("a", [1], () => 7)).toBe(7);
    let asked = 0;
    const one = { ...work("round 4", "A36"), pitch: undefined };
    for (let i = 0; i < 2; i += 1) solvedOnce("rate", one, () => (asked += 1));
    expect(asked).toBe(2);
  });
});
