import { expect, it } from "vitest";
import { columnLp } from "../../src/plan/columnLp";
import { cutProblem } from "../../src/plan/cutProblem";
import { Work } from "../../src/plan/planWork";
import { order } from "./fixture";

const lp = (input: Parameters<typeof cutProblem>[0]) => {
  const problem = cutProblem(input);
  const open = { demand: problem.demand, limits: problem.stocks.map(({ limit }) => limit) };
  return columnLp(problem, open, new Map(), new Work(1e8));
};

it.each([
  [
    "452.25 bars in parts (Chvátal, Linear Programming, ch. 13, from memory)",
    order(
      [
        [45, 97],
        [36, 610],
        [31, 395],
        [14, 211],
      ],
      [[100]],
    ),
    452.25,
  ],
  [
    "2.0909 bars in parts, 3 whole (Marcotte, from memory)",
    order(
      [
        [44, 2],
        [33, 3],
        [12, 6],
      ],
      [[132]],
    ),
    2.0909091,
  ],
])("%s", (_, input, bars) => {
  const { bound, patterns, isShort } = lp(input);
  expect(bound).toBeCloseTo(bars, 3);
  expect(patterns.reduce((sum, [, times]) => sum + times, 0)).toBeCloseTo(bars, 3);
  expect(isShort).toBe(false);
});

it("says where the stock is short", () => {
  expect(lp(order([[2900, 5]], [[3000, 2]])).isShort).toBe(true);
});

it.each([
  // Two bars at half the price, the other eight at the full one; then more cheap bars than are wanted.
  ["2 of the cheap bars", 2, 2 * 50 + 8 * 100],
  ["20 of the cheap bars", 20, 10 * 50],
])("the bound with a stock of %s is what the order costs (by hand)", (_, quantity, cost) => {
  const { bound, patterns } = lp(
    order(
      [[100, 10]],
      [
        [100, quantity, 50],
        [100, null, 100],
      ],
    ),
  );
  const one = patterns.find(([{ stock }]) => stock === 0)![0].cost / 50;
  expect(bound / one).toBeCloseTo(cost, 3);
});
