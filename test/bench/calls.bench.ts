/**
 * Whole calls through bind, as a host makes them: npm run bench
 * Goals: CUTRATE 100 µs a row over 10,000 different rows; a closed-form function over 100,000 rows at most 4 × a hand
 * loop with the same checks and conversions; t(100,000)/t(10,000) at most 12. Never a timed test.
 */
import { catalogue } from "../../functions/catalogue";
import { call } from "../../functions/bind/call";
import { CellError, type Range } from "../../functions/kinds/cell";
import { Memo } from "../../functions/bind/memo";

const of = (name: string) => catalogue.find((e) => e.name === name)!;
const best = (run: () => unknown, times = 5): number => {
  let least = Infinity;
  for (let i = 0; i < times; i += 1) {
    const start = performance.now();
    run();
    least = Math.min(least, performance.now() - start);
  }
  return least;
};
const column = (n: number, cell: (i: number) => string | number): Range =>
  Array.from({ length: n }, (_, i) => [cell(i)]);

const grades = [
  "A36",
  "1018",
  "1045",
  "4140",
  "4140 HT",
  "D2",
  "304",
  "316",
  "17-4PH",
  "6061",
  "C36000",
  "GCI-30",
  "N07718",
  "Ti-6Al-4V",
];
const sizes = (i: number): string =>
  [
    `round ${(1 + (i % 97) / 8).toFixed(3)}`,
    `flat ${2 + (i % 61) / 10}x1`,
    `tube ${2 + (i % 41) / 8}x0.25`,
    `square ${(1 + (i % 83) / 10).toFixed(2)}`,
  ][i % 4]!;
const ten = 10_000;
const rows = column(ten, sizes);
const materials = column(ten, (i) => grades[i % grades.length]!);
const saw: Range = [
  ["Units", "inch"],
  ["Motor power", 5],
  ["Band width", 1.34],
  ["Maximum feed", 20],
  ["Maximum band speed", 330],
];

const distinct = column(ten, (i) => `round ${(1 + i / 1000).toFixed(3)}`);
console.log(
  `CUTRATE, ${ten} rows of ${new Set(rows.flat()).size} sizes × ${grades.length} grades, no saw: ${((best(() => call(of("CUTRATE"), [rows, materials, [["bi-metal"]]], new Memo()), 2) * 1000) / ten).toFixed(1)} µs a row, cold`,
);
console.log(
  `CUTRATE, ${ten} different rounds, no saw: ${((best(() => call(of("CUTRATE"), [distinct, [["4140"]], [["bi-metal"]]], new Memo()), 2) * 1000) / ten).toFixed(1)} µs a row, cold`,
);
console.log(
  `CUTRATE, ${ten} different rounds, a saw of 5 hp: ${((best(() => call(of("CUTRATE"), [distinct, [["4140"]], [["bi-metal"]], null, saw], new Memo()), 2) * 1000) / ten).toFixed(1)} µs a row, cold`,
);

const change = of("BREAKEVEN");
const numbers = (n: number, a: number, b: number): Range => column(n, (i) => a + ((i * 7919) % 1000) * b);
const blades = (n: number): Range =>
  Array.from({ length: n }, (_, i) => [100 + (i % 100), 1000 + (i % 300), 2 + (i % 7) / 10]);
const offers = (n: number): Range =>
  Array.from({ length: n }, (_, i) => [300 + (i % 100), 4000 + (i % 300), 6 + (i % 7) / 10]);
for (const n of [ten, 10 * ten])
  console.log(
    `BREAKEVEN over ${n} rows: ${best(() => call(change, [blades(n), offers(n), [[60]], [[10]]], new Memo()), 3).toFixed(0)} ms`,
  );

const time = of("CUTTIME");
const rates = (n: number): Range => numbers(n, 1, 0.01);
const handLoop = (range: Range): (number | CellError)[][] => {
  const out: (number | CellError)[][] = [];
  for (const row of range) {
    const cell = row[0]!;
    if (cell instanceof CellError || typeof cell !== "number") out.push([new CellError("#VALUE!")]);
    else {
      const rate = cell * 645.16;
      out.push([rate > 0 && rate <= 1e8 ? 24829.1 / rate + 1.5 : new CellError("#VALUE!")]);
    }
  }
  return out;
};
for (const n of [ten, 10 * ten]) {
  const range = rates(n);
  const [ours, hand] = [
    best(() => call(time, [[["round 7"]], range, [[1.5]]], new Memo())),
    best(() => handLoop(range)),
  ];
  console.log(
    `CUTTIME over ${n} rates: ${ours.toFixed(1)} ms; a hand loop with the same checks ${hand.toFixed(1)} ms, ratio ${(ours / hand).toFixed(1)}`,
  );
}
