/**
 * Speed of QUOTE, a small script: npm run bench
 * 5,000 order lines in one call beside the same lines as single calls. "Warm" keeps the texts that it has read.
 */
import { call } from "../../functions/bind/call";
import { money } from "../../functions/catalogue/money";
import type { Cell, Range } from "../../functions/kinds/cell";
import { slots } from "../../functions/bind/slots";
import { Memo } from "../../functions/bind/memo";

const lines = 5000;
const quote = money.find((e) => e.name === "QUOTE")!;
const settings: Range = [
  ["Units", "inch"],
  ["Hourly cost", 72],
  ["Handling minutes", 1.5],
  ["Bi-metal price", 180],
  ["Bi-metal life", 9000],
  ["Carbide price", 420],
  ["Carbide life", 15000],
  ["Stock length", "20 ft"],
  ["Material price", 0.6],
  ["Kerf", 0.06],
];
const grades = ["A36", "4140", "304", "1045", "6061-T6"];
/** Sizes repeat as in an order book, 160 of them, and never in a row. */
const items = Array.from({ length: lines }, (_, i): Cell[] => [
  i % 3 === 0 ? `flat ${4 + (i % 8)}x2` : `round ${2 + ((i * 7) % 128) / 16}`,
]);
const materials = items.map((_, i): Cell[] => [grades[i % grades.length]!]);
const quantities = items.map((_, i): Cell[] => [1 + ((i * 13) % 200)]);

function run(from: number, to: number, blade: string, memo: Memo): Cell[][] {
  const given = new Map<string, Range>([
    ["item", items.slice(from, to)],
    ["blade", [[blade]]],
    ["quantity", quantities.slice(from, to)],
    ["settings", settings],
    ["material", materials.slice(from, to)],
    ["length", [[12.5]]],
  ]);
  return call(
    quote,
    slots(quote).map((s) => given.get(s.name) ?? null),
    memo,
  );
}

function time(name: string, work: () => Cell[][]): Cell[][] {
  const begin = performance.now();
  const got = work();
  const took = performance.now() - begin;
  console.log(
    `${name.padEnd(40)} ${took.toFixed(0).padStart(6)} ms  ${((1000 * took) / lines).toFixed(1).padStart(7)} µs a line`,
  );
  return got;
}

for (const blade of ["bi-metal", "cheapest"]) {
  const kept = new Memo();
  time(`${blade}: one call, cold`, () => run(0, lines, blade, new Memo()));
  const all = time(`${blade}: one call`, () => run(0, lines, blade, kept));
  const single = time(`${blade}: ${lines} single calls, warm`, () =>
    items.map((_, i) => run(i, i + 1, blade, kept)[0]!),
  );
  const refused = all.filter(([c]) => typeof c !== "number").length;
  const same = all.every(([c], i) => typeof c !== "number" || c === single[i]![0]);
  console.log(
    `${blade}: ${lines - refused} lines priced, ${refused} refused; single calls ${same ? "give the same" : "DIFFER"}`,
  );
}
