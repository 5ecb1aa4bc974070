import { bench, describe } from "vitest";
import { readItem } from "../../src/item/readItem";

/** A column of 10,000 mixed description lines, each different; run with `npx vitest bench test/bench/item.bench.ts`. */
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
const lines = Array.from({ length: 10_000 }, (_, n) => kinds[n % kinds.length]!(Math.floor(n / kinds.length)));

describe("items", () => {
  bench("read 10,000 mixed description lines", () => {
    for (const line of lines) readItem(line, "inch", []);
  });
});
