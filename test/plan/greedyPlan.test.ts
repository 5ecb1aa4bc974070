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
