import { cutProblem } from "../../src/plan/cutProblem";
import { greedyPlan } from "../../src/plan/greedyPlan";
import { PlanSearch } from "../../src/plan/planSearch";
import { Work } from "../../src/plan/planWork";

/** A search that knows the greedy plan. */
export function searchOf(input: Parameters<typeof cutProblem>[0]): PlanSearch {
  const problem = cutProblem(input);
  const all = { demand: problem.demand, limits: problem.stocks.map(({ limit }) => limit) };
  return new PlanSearch(problem, new Work(1e7), greedyPlan(problem, all));
}
