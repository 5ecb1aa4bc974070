import { expect, it } from "vitest";
import { greedyPlan } from "../../src/plan/greedyPlan";
import { cutProblem } from "../../src/plan/cutProblem";
import { order } from "./fixture";

const greedy = (input: Parameters<typeof cutProblem>[0]) => {
  const problem = cutProblem(input);
  return greedyPlan(problem, { demand: problem.demand, limits: problem.stocks.map(({ limit }) => limit) });
};

it("longest first, as often as it goes (by hand)", () => {
  const plan = greedy(
    order(
      [
        [60, 2],
        [40, 4],
      ],
      [[100]],
    ),
  )!;
  expect(plan.map(([{ key }, times]) => [key, times])).toEqual([
    ["0:0,1,1,1", 2],
    ["0:1,2", 1],
  ]);
});
it("nothing where the stock runs out", () => {
  expect(greedy(order([[60, 3]], [[100, 2]]))).toBeUndefined();
});

it("the bar that costs least for what is filled of it, whichever stands first (by hand)", () => {
  const stocks = [
    [60, null, 50],
    [100, null, 100],
  ] as const;
  for (const list of [stocks, [stocks[1], stocks[0]]])
    expect(greedy(order([[60, 1]], list))!.map(([{ stock }]) => list[stock]![0])).toEqual([60]);
  // 40 + 60 fill the long bar: 1 a mm against 50 / 60 and then 50 / 40.
  expect(greedy(order([[100, 1]], stocks))!.map(([{ stock }]) => stock)).toEqual([1]);
});
