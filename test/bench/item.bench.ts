/**
 * Speed of the order-line reader, a small script (npm run bench): a column of 10,000 mixed descriptions, each different, in
 * one ITEM call beside the same lines in a plain loop.
 */
import { call } from "../../functions/bind/call";
import { catalogue } from "../../functions/catalogue";
import { Memo } from "../../functions/bind/memo";
import { readItem } from "../../src/item/readItem";

const kinds: readonly ((n: number) => string)[] = [
  (n) => `4140 HT RND ${1 + (n % 12)} x ${1 + (n % 20)} ft`,
  (n) => `${1 + (n % 50)} pcs 1018 CF RD ${1 + (n % 4)}-1/4 x ${12 + (n % 90)}" LG`,
  (n) => `W12X50 A992 ${10 + (n % 50)}'-6"`,
  (n) => `${2 + (n % 4)} X ${2 + (n % 4)} X 1/4 ANGLE A36 ${10 + (n % 10)}'`,
  (n) => `SQ TUBE 3X3X.25 A500 GR B ${10 + (n % 30)} FT R/L QTY ${n}`,
  (n) => `6061-T6 FLAT ${2 + (n % 6)} x 1 x 12' PO ${10_000 + n}`,
  (n) => `Rund ${20 + (n % 180)} mm 42CrMo4+QT ${1 + (n % 6)} m`,
  (n) => `${n + 1} Stk Rechteckrohr ${60 + (n % 90)}x40x4 mm S355J2H L=${1000 + n} mm`,
  (n) => `RD 3 X ${n + 1} EA 4140 DELIVER FRIDAY`,
  (n) => `${n + 1} RD 3 XYZ${n}`,
];
const lines = Array.from({ length: 10_000 }, (_, n) => kinds[n % kinds.length]!(n));
const item = catalogue.find((e) => e.name === "ITEM")!;
const time = (name: string, run: () => unknown): void => {
  let least = Infinity;
  for (let i = 0; i < 3; i += 1) {
    const begin = performance.now();
    run();
    least = Math.min(least, performance.now() - begin);
  }
  console.log(`${name}: ${least.toFixed(0)} ms, ${((least * 1000) / lines.length).toFixed(0)} µs a line`);
};
console.log(`${new Set(lines).size} different lines`);
time("plain loop", () => lines.forEach((line) => readItem(line, "inch", [])));
time("one ITEM call", () => call(item, [lines.map((line) => [line]), [["all"]]], new Memo()));
