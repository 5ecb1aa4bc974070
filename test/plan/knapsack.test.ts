import { expect, it } from "vitest";
import { knapsack } from "../../src/plan/knapsack";
import { Work } from "../../src/plan/planWork";
import { random } from "./fixture";

const solve = (capacity: number, values: number[], widths: number[], most: number[], nodes?: number) => {
  const found: number[] = [];
  const value = knapsack(
    { capacity, values, widths, most, floor: 0, work: new Work(1e9), ...(nodes === undefined ? {} : { nodes }) },
    (cuts) => found.push(cuts.reduce((sum, [i, n]) => sum + n * values[i]!, 0)),
  );
  return { value, found };
};
/** Table over every room (dynamic programming), another method. */
const byTable = (capacity: number, values: number[], widths: number[], most: number[]): number => {
  const best = new Array<number>(capacity + 1).fill(0);
  values.forEach((value, i) => {
    for (let n = 0; n < most[i]!; n += 1)
      for (let room = capacity; room >= widths[i]!; room -= 1)
        best[room] = Math.max(best[room]!, best[room - widths[i]!]! + value);
  });
  return best[capacity]!;
};

it("the greatest value of 300 fillings, against a table over every room", () => {
  const next = random(3);
  for (let run = 0; run < 300; run += 1) {
    const n = 1 + Math.floor(next() * 5);
    const list = (most: number): number[] => Array.from({ length: n }, () => 1 + Math.floor(next() * most));
    const [values, widths, most] = [list(30), list(20), list(4)];
    const { value, found } = solve(50, values, widths, most);
    expect(value).toBeCloseTo(byTable(50, values, widths, most), 9);
    expect(found.at(-1) ?? 0).toBeCloseTo(value, 9);
  }
});

it("cut off, it gives a value that is not below the best", () => {
  const [values, widths, most] = [
    [31, 29, 23],
    [17, 16, 13],
    [9, 9, 9],
  ];
  expect(solve(101, values, widths, most, 2).value).toBeGreaterThanOrEqual(byTable(101, values, widths, most));
});

it("cut off, it gives the filling in parts: the best per width first, as many as there are (by hand)", () => {
  // 2 of 17 and 2 of 16 leave 35 of 101 for 35/13 of the third.
  expect(solve(101, [31, 29, 23], [17, 16, 13], [2, 2, 9], 2).value).toBeCloseTo(62 + 58 + (35 / 13) * 23, 9);
});
