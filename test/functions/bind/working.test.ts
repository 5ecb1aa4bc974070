import { describe, expect, it } from "vitest";
import { all, create } from "mathjs";
import { call } from "../../../functions/bind/call";
import { Memo } from "../../../functions/bind/memo";
import { parseCall } from "../../../functions/bind/parseCall";
import { CellError, type Cell } from "../../../functions/kinds/cell";
import { catalogue } from "../../../functions/catalogue";

const working = catalogue.find((e) => e.name === "WORKING")!;
const worked = catalogue.filter((e) => e.working !== undefined);
const memo = new Memo();
const rows = (formula: string): Cell[][] => call(working, parseCall(formula).args, memo);
/** The working of a call that is written as the function itself. */
const of = (formula: string): Cell[][] => rows(formula.replace(/^SAW\.(\w+)\(/, 'SAW.WORKING("$1", '));

const math = create(all!, {});

/** The printed formula for mathjs: its own signs, and symbols that it takes as names. */
const names = /p\*|[A-Za-z]\w*/g;
const known = new Set(["max", "min", "exp", "abs", "ln", "floor", "ceil"]);
const forMath = (formula: string): string =>
  formula
    .replace(names, (name) => (name === "ln" ? "log" : known.has(name) ? name : `s_${name.replace("*", "star")}`))
    .replace(/×/g, "*")
    .replace(/−/g, "-");
const nameOf = (symbol: string): string => `s_${symbol.replace("*", "star")}`;

/** How many formulas of a working were evaluated again; every one must give the value printed beside it. */
function evaluated(table: Cell[][]): number {
  const scope: Record<string, number> = {};
  let count = 0;
  for (const [step, symbol, formula, value, , source] of table.slice(1) as [
    string,
    string,
    string,
    Cell,
    string,
    string,
  ][]) {
    if (source === "the same, in your units") continue;
    if (formula !== "" && !formula.startsWith("Σ") && typeof value === "number") {
      const got = Number(math.evaluate(forMath(formula), { ...scope }));
      expect(Math.abs(got - value), `${step}: ${formula} = ${got}, printed ${value}`).toBeLessThanOrEqual(
        1e-9 * Math.max(Math.abs(value), Math.abs(got)) + (step.startsWith("remnant") ? 1e-6 : 1e-12),
      );
      count += 1;
    }
    if (symbol !== "") scope[nameOf(symbol)] = typeof value === "number" ? value : value === "none" ? Infinity : NaN;
  }
  return count;
}

/** Random numbers that are the same in every run. */
function* numbers(seed: number): Generator<number, never> {
  let state = seed;
  for (;;) {
    state = (state * 1_664_525 + 1_013_904_223) % 4_294_967_296;
    yield state / 4_294_967_296;
  }
}
const random = numbers(20_261_126);
const next = (): number => random.next().value;
const between = (from: number, to: number): number => Number((from + (to - from) * next()).toPrecision(4));
const pick = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)]!;

const size = (): string => {
  const w = between(1, 8);
  return pick([
    `"round ${w}"`,
    `"flat ${w}x${between(0.5, w)}"`,
    `"square ${w}"`,
    `"tube ${w}x${between(0.1, 0.4) * w}"`,
    `"round ${w} bundle 2x3"`,
    `"round ${w} mitre 30"`,
    '"W12x50"',
  ]);
};
const grade = (): string =>
  `"${pick(["A36", "1045", "4140", "304", "17-4PH", "D2", "6061", "Ti-6Al-4V", "A48 class 30"])}"`;
const blade = (): string => pick(['"bi-metal"', '"carbide"']);
const rest = (): string =>
  [
    "Motor power," + between(1, 10),
    "Maximum feed," + between(0.5, 20),
    "Band width,1.25",
    "Minimum band speed," + between(40, 80),
    "Maximum band speed," + between(250, 400),
    'Feed mode,"constant feed"',
    'Coolant,"dry"',
    'Saw condition,"worn"',
    "Rate factor," + between(0.6, 1.4),
    "Rate spread,1.3",
    "Handling minutes," + between(0.5, 4),
    "Blade change minutes," + between(5, 20),
    "Load minutes," + between(1, 9),
    "Set-up minutes," + between(1, 20),
    "Break-in area," + between(10, 60),
    "Minimum charge," + between(10, 90),
    "Trim,0.25",
    "Grip,4",
    "Useful remnant,24",
  ]
    .filter(() => next() < 0.3)
    .map((row) => ";" + row.replace(/^[^,]+/, (label) => `"${label}"`))
    .join("");
const inchShop = (): string =>
  `{"Units","inch";"Hourly cost",${between(30, 120)};"Bi-metal price",180;"Bi-metal life",${between(3000, 9000)};"Carbide price",420;"Carbide life",15000;"Stock length","20 ft";"Margin",${between(0, 0.5) || 0.1};"Material price",1.1;"Scrap price",0.15;"Density",0.284${pick(["", ';"Operator cost",40;"Operator share",0.3'])}${pick(["", ';"Test pieces",2;"Reject share",0.1;"Charge material","yes"'])}${pick(["", ';"Useful remnant","2 ft";"Remnant discount",0.4'])}${rest()}}`;
const triple = (): string => `{${between(80, 600)}, ${between(300, 9000)}, ${between(1, 12)}}`;

const calls: Readonly<Record<string, () => string>> = {
  CUTRATE: () =>
    `SAW.CUTRATE(${size()}, ${grade()}, ${blade()}, ${pick(["", '"3/4"', '"4/6"'])}, ${pick(["", inchShop()])})`,
  CUTDATA: () => `SAW.CUTDATA(${size()}, ${grade()}, ${blade()}, "all", , ${pick(["", inchShop()])})`,
  CUTTIME: () => `SAW.CUTTIME(${size()}, ${between(1, 20)}, , ${pick(["", inchShop()])})`,
  CUTCOST: () => `SAW.CUTCOST(${size()}, ${between(1, 20)}, 60, 180, ${between(500, 9000)}, ${pick(["", inchShop()])})`,
  QUOTE: () =>
    `SAW.QUOTE(${size()}, ${pick([blade(), '"cheapest"'])}, ${Math.ceil(next() * 90)}, ${inchShop()}, ${grade()}, ${between(2, 30)})`,
  BREAKEVEN: () =>
    `SAW.BREAKEVEN(${triple()}, ${triple()}, ${between(5, 120)}, ${pick(["", "12"])}, ${pick(["", "0.002"])}, ${pick(["", "0.001"])})`,
  PAYBACK: () =>
    `SAW.PAYBACK(${triple()}, ${triple()}, 60, 2000, 4000, ${between(1, 400)}, ${between(1, 20)}, 10, ${pick(["", "0.002"])}, ${pick(["", "0.001"])})`,
  MASS: () => `SAW.MASS(${size()}, ${between(1, 200)}, ${grade()})`,
  BARS: () =>
    `SAW.BARS(${between(100, 400)}, ${between(1, 60)}, ${Math.ceil(next() * 300)}, 0.06, ${pick(["", "0.4"])}, ${pick(["", "2.5"])})`,
};

describe("WORKING", () => {
  it("is there for nine functions", () => {
    expect(worked.map((e) => e.name).sort()).toEqual(Object.keys(calls).sort());
  });

  it("every formula of every example gives, by mathjs, the value printed beside it", () => {
    for (const e of worked)
      for (const formula of e.examples) expect(evaluated(of(formula)), formula).toBeGreaterThan(0);
  });

  it("so do 2,000 random calls, to 1e-9, and the last value is the function's own answer", { timeout: 120_000 }, () => {
    let [formulas, refused] = [0, 0];
    for (let i = 0; i < 2000; i += 1) {
      const e = worked[i % worked.length]!;
      const formula = calls[e.name]!();
      const table = of(formula);
      if (table[1]![0] === "refused") {
        const own = call(e, parseCall(formula).args, memo)
          .flat()
          .find((c) => c instanceof CellError);
        expect(table[1]![3], formula).toBe((own as CellError).text);
        refused += 1;
        continue;
      }
      formulas += evaluated(table);
      if (e.name === "CUTDATA") continue;
      const own = call(e, parseCall(formula).args, memo)[0]![0]!;
      const last = table[table.length - 1]![3];
      if (typeof own === "number" && e.name !== "BARS")
        expect(Math.abs(Number(last) / own - 1), formula).toBeLessThan(1e-9);
    }
    expect(refused).toBeLessThan(700);
    expect(formulas).toBeGreaterThan(10_000);
    console.log(`formulas ${formulas}, refused ${refused}`);
  });

  it("every line has a name, a unit and a source, and no two lines of a working have the same key", () => {
    for (const { name, working: own } of worked) {
      for (const [key, , says, , unit, source] of own!.lines)
        for (const text of [key, says, unit, source]) expect(text, `${name}: ${key}`).toMatch(/\S/);
      const keys = own!.lines.map(([key]) => key);
      expect(new Set(keys).size, name).toBe(keys.length);
    }
  });

  const valueOf = (table: Cell[][], step: string): number => Number(table.find((row) => row[0] === step)![3]);

  it("the sum over the way of the band is that of a loop of 200,000 slices written here (round of 4 in, 6 in)", () => {
    for (const d of [4, 6]) {
      const table = of(`SAW.CUTRATE("round ${d}", "304", "bi-metal")`);
      const [b, B, g, v, target] = [
        "bite",
        "room of the gullets as a bite",
        "pitch factor",
        "band speed",
        "pitch aimed at",
      ].map((s) => valueOf(table, s)) as [number, number, number, number, number];
      const [D, n] = [d * 25.4, 200_000];
      let minutes = 0;
      for (let k = 0; k < n; k += 1) {
        const y = ((k + 0.5) / n) * D;
        const L = 2 * Math.sqrt(y * (D - y));
        minutes += D / n / (((Math.min(b * Math.min(1, L / (6 * target)), B) * g) / L) * v);
      }
      expect(valueOf(table, "minutes of cutting") / minutes).toBeCloseTo(1, 5);
    }
  });

  it("with a maximum feed, a loop over the way gives the minutes of CUTTIME", () => {
    const table = of('SAW.CUTTIME("round 4", 12, , {"Units","inch";"Maximum feed",4})');
    let minutes = 0;
    for (let k = 0; k < 200_000; k += 1) {
      const y = ((k + 0.5) / 200_000) * 4;
      minutes += 4 / 200_000 / Math.min(12 / (2 * Math.sqrt(y * (4 - y))), 4);
    }
    expect(valueOf(table, "minutes of cutting") / minutes).toBeCloseTo(1, 5);
  });

  it("bars, cuts, kerfs and ends of a quote are those of a bar that is cut piece by piece here", () => {
    const table = of(
      'SAW.QUOTE("round 2", "bi-metal", 47, {"Units","inch";"Hourly cost",72;"Bi-metal price",180;"Bi-metal life",9000;"Stock length","20 ft";"Trim",0.25;"Grip",4;"Kerf",0.065;"Useful remnant",24}, "A36", 11)',
    );
    let [bars, cuts, kerf, ends, left] = [0, 0, 0, 0, 0];
    const back = (): void => {
      if (bars > 0 && left < 24) ends += left;
    };
    for (let piece = 0; piece < 47; piece += 1) {
      if (bars === 0 || left < 11 + 0.065 + 4) {
        back();
        [bars, cuts, left, ends] = [bars + 1, cuts + 1, 240 - 0.25, ends + 0.25];
      }
      [cuts, left, kerf] = [cuts + 1, left - 11 - 0.065, kerf + 0.065];
    }
    back();
    expect(valueOf(table, "bars")).toBe(bars);
    expect(valueOf(table, "cuts of the stack, a trim cut a load in them")).toBe(cuts);
    expect(valueOf(table, "bar turned into chips")).toBeCloseTo(kerf * 25.4, 6);
    expect(valueOf(table, "trim and remnants not useful")).toBeCloseTo(ends * 25.4, 6);
  });

  it("the last row is the answer in the caller's units, the block's where the call names none", () => {
    const inch = of('SAW.CUTRATE("round 4", "A36", "bi-metal")');
    expect(inch[inch.length - 1]!.slice(3, 5)).toEqual([expect.closeTo(10.1814, 3), "in²/min"]);
    const metric = of('SAW.CUTRATE("round 4 in", "A36", "bi-metal", , {"Units","metric"})');
    expect(metric[metric.length - 1]!.slice(3, 5)).toEqual([expect.closeTo(10.1814 * 6.4516, 2), "cm²/min"]);
  });

  it("the function may be named as it is typed in a cell, with = and SAW. or without", () => {
    const plain = rows('SAW.WORKING("CUTRATE", "round 4", "A36", "bi-metal")');
    expect(plain.length).toBeGreaterThan(10);
    for (const name of ["cutrate", "=CUTRATE", "=cutrate", "SAW.CUTRATE", "saw.cutrate", "=SAW.CUTRATE"])
      expect(rows(`SAW.WORKING("${name}", "round 4", "A36", "bi-metal")`), name).toEqual(plain);
  });

  it("a refusal is a row with its sentence; a value without an answer is its sentence among the others", () => {
    const step = ["step", "symbol", "formula", "value", "unit", "source"];
    expect(of('SAW.CUTRATE("round 4", "tantalum", "bi-metal")')).toEqual([
      step,
      ["refused", "", "", expect.stringMatching(/^No cutting data/), "", ""],
    ]);
    expect(of('SAW.CUTRATE(7, "A36", "bi-metal")')[1]![3]).toMatch(/only a number/);
    expect(of('SAW.CUTRATE({"round 4";"round 5"}, "A36", "bi-metal")')[1]![3]).toMatch(/for one item; here are 2/);
    const wins = of("SAW.BREAKEVEN({180, 2500, 2.1}, {420, 7000, 10}, 72)");
    expect(wins.find((r) => String(r[0]).startsWith("saw hour value at which"))![3]).toBe(
      "The offer wins at every saw hour value.",
    );
  });

  it.each(["AREA", "WORKING", "", "NOSUCH"])('refuses the function "%s" and names those that have one', (name) => {
    const [[cell]] = call(working, [[[name]]], memo) as [[CellError]];
    expect(cell).toBeInstanceOf(CellError);
    expect(cell.text).toMatch(name === "" ? /^function is empty/ : /^function must be one of CUTRATE, CUTDATA/);
  });

  it("takes the name as it stands in a formula", () => {
    expect(call(working, [[["=saw.mass"]], [["round 4"]], [[10]], [["A36"]]], memo)[0]![0]).toBe("step");
  });
});

describe("units of a working", () => {
  const units = (formula: string): ReadonlyMap<string, string> =>
    new Map(
      of(formula)
        .slice(1)
        .filter((row) => row[5] !== "the same, in your units")
        .map((row) => [String(row[0]), String(row[4])]),
    );
  it("are the core's, which the formulas use, whatever the sheet shows (docs/method.md)", () => {
    const data = units('SAW.CUTDATA("round 4", "304", "bi-metal", "all", , {"Units","inch";"Motor power",5})');
    expect(data.get("band speed to set")).toBe("mm/min");
    expect(data.get("mean chip thickness")).toBe("mm");
    expect(data.get("low rate") ?? data.get("high rate")).toBe("mm²/min");
    expect(data.get("greatest power at the band")).toBe("W");
    expect(data.get("greatest cutting force")).toBe("N");
    expect(data.get("minutes at the high rate")).toBe("min");
    expect(data.get("teeth in the cut")).toBe("");
    const mass = units('SAW.MASS("round 4", 12, "304")');
    expect([...mass.values()]).toEqual(expect.arrayContaining(["mm²", "kg/mm³", "kg", "mm"]));
  });
  it("the answer stands once more in the caller's units, where those are others", () => {
    const last = (formula: string) => of(formula).at(-1)!;
    // 1 in² = 645.16 mm².
    const table = of('SAW.CUTRATE("round 4", "304", "bi-metal")');
    const [core, shown] = table.slice(-2) as [Cell[], Cell[]];
    expect(shown.slice(4)).toEqual(["in²/min", "the same, in your units"]);
    expect(Number(core[3]) / Number(shown[3])).toBeCloseTo(645.16, 9);
    expect(last('SAW.CUTTIME("round 4", 12)')[5]).not.toBe("the same, in your units");
  });
});

it("an error that comes in goes out alone; a text has no unit; a long name is cut short", () => {
  const passed = call(working, [[["MASS"]], [["round 4"]], [[new CellError("#N/A")]], [["A36"]]], memo);
  expect(passed.map((row) => row.map((cell) => (cell as CellError).code))).toEqual([["#N/A"]]);
  const table = of('SAW.CUTRATE("round 4", "304", "bi-metal")').slice(1);
  const texts = table.filter((row) => typeof row[3] === "string" && row[3] !== "none");
  expect(texts.length).toBeGreaterThan(0);
  expect(new Set(texts.map((row) => row[4]))).toEqual(new Set([""]));
  const [[cell]] = call(working, [[["x".repeat(60)]]], memo) as [[CellError]];
  expect(cell.text.endsWith(`; it is "${"x".repeat(40)}"`)).toBe(true);
});
