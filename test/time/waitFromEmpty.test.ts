import { describe, expect, it } from "vitest";
import { longRunWait } from "../../src/time/longRunWait";
import { waitFromEmpty } from "../../src/time/waitFromEmpty";
import { relative } from "../cost/fixture";

/** Mulberry32, a small generator of known good mixing. */
const random = (seed: number) => () => {
  seed = (seed + 0x6d2b79f5) | 0;
  let t = Math.imul(seed ^ (seed >>> 15), 1 | seed);
  t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
  return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
};

type Mix = readonly (readonly [minutes: number, jobs: number])[];
const alike: Mix = [[30, 1]];
const usual: Mix = [
  [10, 40],
  [25, 30],
  [60, 20],
  [120, 10],
];
const mixed: Mix = [
  [5, 60],
  [20, 30],
  [240, 10],
];

const momentsOf = (mix: Mix) => {
  const jobs = mix.reduce((s, [, n]) => s + n, 0);
  const mean = mix.reduce((s, [m, n]) => s + m * n, 0) / jobs;
  return { jobs, mean, variation: mix.reduce((s, [m, n]) => s + n * (m / mean - 1) ** 2, 0) / jobs };
};

/** Saws with a clock each: a job that comes takes the one that is free first. Mean wait of the jobs of many weeks, each from empty. */
function simulate(mix: Mix, share: number, saws: number, hours: number, weeks: number, seed: number) {
  const next = random(seed);
  const { jobs, mean } = momentsOf(mix);
  const gap = mean / (share * saws);
  const free = new Float64Array(saws);
  let [waits, count, squares, product, counts] = [0, 0, 0, 0, 0];
  for (let week = 0; week < weeks; week += 1) {
    free.fill(0);
    let [own, came] = [0, 0];
    for (let clock = -gap * Math.log(1 - next()); clock < hours * 60; clock -= gap * Math.log(1 - next())) {
      let first = 0;
      for (let s = 1; s < saws; s += 1) if (free[s]! < free[first]!) first = s;
      const start = Math.max(clock, free[first]!);
      let pick = next() * jobs;
      const minutes = mix.find(([, n]) => (pick -= n) < 0)![0];
      free[first] = start + minutes;
      own += start - clock;
      came += 1;
    }
    waits += own;
    count += came;
    squares += own * own;
    product += own * came;
    counts += came * came;
  }
  const wait = waits / count;
  // Standard error of a ratio of sums.
  const spread = squares - 2 * wait * product + wait * wait * counts;
  return { wait, error: Math.sqrt(Math.max(0, spread)) / count };
}

describe("values of a reference program (simulated apart, 12,000 runs; the formula to 1e-3)", () => {
  it.each([
    [1, 1, alike, 40, 138.24, 135.6044],
    [0.98, 2, usual, 40, 121.39, 119.6213],
    [1.1, 4, mixed, 8, 50.85, 53.7921],
    [1.2, 3, alike, 160, 982.1, 978.1634],
  ] as const)("share %s, %s saws", (share, saws, mix, hours, simulated, formula) => {
    const wait = waitFromEmpty({ share, saws, ...momentsOf(mix) }, hours);
    expect(Math.abs(wait - formula)).toBeLessThan(1e-3);
    expect(relative(wait, simulated)).toBeLessThan(0.15);
  });
});

describe("laws", () => {
  it("after a long time it is the wait of the long run", () => {
    for (const saws of [1, 2, 5])
      for (const share of [0.8, 0.9, 0.95]) {
        const queue = { share, saws, mean: 30, variation: 0.7 };
        expect(relative(waitFromEmpty(queue, 1e7), longRunWait(queue))).toBeLessThan(5e-3);
      }
  });

  it("grows with the share and the hours, and falls with more saws", () => {
    const at = (share: number, hours: number, saws: number) =>
      waitFromEmpty({ share, saws, mean: 30, variation: 0.7 }, hours);
    for (const share of [0.8, 0.95, 1, 1.2]) {
      expect(at(share + 0.02, 40, 2)).toBeGreaterThan(at(share, 40, 2));
      expect(at(share, 50, 2)).toBeGreaterThan(at(share, 40, 2));
      expect(at(share, 40, 3)).toBeLessThan(at(share, 40, 2));
    }
  });
});

/** WEEKS=20000 is the long run. */
const weeks = Number(process.env["WEEKS"] ?? 400);
describe(`the mean of ${weeks} simulated weeks of 40 h from empty, within the accuracy stated and three standard errors`, () => {
  const loadings = [0.9, 0.95, 1, 1.05, 1.1, 1.2];
  it.each([
    ["jobs alike, 1 saw", alike, 1, 0.15],
    ["jobs alike, 2 saws", alike, 2, 0.15],
    ["jobs alike, 4 saws", alike, 4, 0.15],
    ["jobs alike, 8 saws", alike, 8, 0.2],
    ["a usual mix, 1 saw", usual, 1, 0.15],
    ["a usual mix, 2 saws", usual, 2, 0.15],
    ["a usual mix, 4 saws", usual, 4, 0.15],
    ["a usual mix, 8 saws", usual, 8, 0.2],
    ["a few long jobs, 1 saw", mixed, 1, 0.25],
    ["a few long jobs, 4 saws", mixed, 4, 0.25],
  ] as const)("%s", (name, mix, saws, accuracy) => {
    const off = loadings.map((share, i) => {
      const { wait, error } = simulate(mix, share, saws, 40, weeks, 100 * saws + i);
      const ours = waitFromEmpty({ share, saws, ...momentsOf(mix) }, 40);
      expect(Math.abs(ours - wait), `${share}: ${ours} against ${wait} ± ${error}`).toBeLessThan(
        accuracy * wait + 3 * error,
      );
      return `${share}: ${(100 * (ours / wait - 1)).toFixed(1)} %`;
    });
    if (process.env["WEEKS"] !== undefined) console.log(name, off.join(", "));
  });
});
