/**
 * 10,000 different sizes × CUTRATE in one call, against a plain loop of 100 million additions on the same machine: npm run bench -- cuts
 * Goal: 3 × the loop for rounds. Never a timed test.
 */
import { catalogue } from "../../functions/catalogue";
import { call } from "../../functions/bind/call";
import { Memo } from "../../functions/bind/memo";

const cutRate = catalogue.find((e) => e.name === "CUTRATE")!;
const best = (run: () => unknown, times: number): number => {
  let least = Infinity;
  for (let i = 0; i < times; i += 1) {
    const start = performance.now();
    run();
    least = Math.min(least, performance.now() - start);
  }
  return least;
};
const additions = (): number => {
  let sum = 0;
  for (let i = 0; i < 1e8; i += 1) sum += i;
  return sum;
};
const loop = best(additions, 5);
console.log(`100 million additions: ${loop.toFixed(0)} ms`);
const kinds: readonly (readonly [string, (i: number) => string])[] = [
  ["rounds", (i) => `round ${(1 + i / 1000).toFixed(3)}`],
  ["flats", (i) => `flat ${(2 + i / 1000).toFixed(3)}x1`],
  ["tubes", (i) => `tube ${(2 + i / 1000).toFixed(3)}x0.25`],
  ["boxes", (i) => `box ${(2 + i / 1000).toFixed(3)}x2x1/4`],
];
for (const [name, size] of kinds) {
  const sizes = Array.from({ length: 10_000 }, (_, i) => [size(i)]);
  const took = best(() => call(cutRate, [sizes, [["4140"]], [["bi-metal"]]], new Memo()), 6);
  console.log(`CUTRATE, 10,000 ${name}: ${took.toFixed(0)} ms, ${(took / loop).toFixed(1)} loops`);
}
