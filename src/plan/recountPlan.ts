import { InputError } from "../errors";
import type { Plan } from "./cutPattern";
import type { CutProblem } from "./cutProblem";
import { planCost } from "./planSearch";

/**
 * Counts a plan again from its cuts: room, pieces, bars and cost. A plan that does not pass is not shown.
 * @param problem the order
 * @param plan patterns and times [-]
 * @param most cost that the search found [cost]
 * @returns the cost of the plan [cost]
 * @throws InputError "none": a bar is overfilled, pieces or bars do not add up, or the plan costs more
 * @source definition of the order
 */
export function recountPlan({ widths, demand, stocks, grain }: CutProblem, plan: Plan, most: number): number {
  const open = [...demand];
  const limits = stocks.map(({ limit }) => limit);
  let isOver = false;
  for (const [{ cuts, stock }, times] of plan) {
    isOver ||= cuts.reduce((sum, [i, pieces]) => sum + pieces * widths[i]!, 0) > stocks[stock]!.capacity;
    for (const [i, pieces] of cuts) open[i]! -= times * pieces;
    limits[stock]! -= times;
  }
  const cost = planCost(plan);
  if (isOver || open.some((pieces) => pieces !== 0) || limits.some((limit) => limit < 0) || cost > most + grain / 2)
    throw new InputError("none", "lengths", "the plan did not pass its own count: please report it");
  return cost;
}
