import { planConstants as k } from "../data/planConstants";
import { InputError } from "../errors";
import type { Plan } from "./cutPattern";
import type { CutProblem } from "./cutProblem";
import { divePlan } from "./divePlan";
import { exactPlan } from "./exactPlan";
import { gatherRemnants } from "./gatherRemnants";
import { greedyPlan } from "./greedyPlan";
import { improvePlan } from "./improvePlan";
import { PlanSearch } from "./planSearch";
import { Work } from "./planWork";
import { recountPlan } from "./recountPlan";

export interface BestPlan {
  readonly plan: Plan;
  readonly cost: number;
  /** No plan costs less. */
  readonly bound: number;
  readonly isProven: boolean;
}

/** Equal patterns as one, the most often cut first. */
function grouped(plan: Plan): Plan {
  const all = new Map<string, Plan[number]>();
  for (const [pattern, times] of plan) all.set(pattern.key, [pattern, (all.get(pattern.key)?.[1] ?? 0) + times]);
  return [...all.values()].sort((p, q) => p[0].stock - q[0].stock || q[1] - p[1] || (p[0].key < q[0].key ? -1 : 1));
}

/**
 * The plan of least cost that a bounded search finds, with a proven bound: first fit, column generation with dives, every
 * way where the order is small, then improvement; the same at every run and on any machine.
 * @param problem the order
 * @returns patterns and times [-], cost and bound [cost], whether it is proven least
 * @throws InputError "none": the stock does not cover the order, or no plan was found; as recountPlan
 * @source see columnLp, divePlan, exactPlan, improvePlan
 */
export function bestPlan(problem: CutProblem): BestPlan {
  const all = { demand: problem.demand, limits: problem.stocks.map(({ limit }) => limit) };
  const search = new PlanSearch(problem, new Work(k.cutWork.value), greedyPlan(problem, all));
  if (search.root.isShort && search.best === undefined)
    throw new InputError("none", "stockQuantities", "the stock does not cover the order");
  for (let rank = 0; rank < k.cutDives.value && !search.isDone; rank += 1) divePlan(search, all, [], rank);
  const pieces = problem.demand.reduce((sum, quantity) => sum + quantity, 0);
  const isEvery = !search.isDone && pieces <= k.exactPieces.value && exactPlan(search, all, [], k.exactNodes.value);
  if (isEvery) search.bound = Math.max(search.bound, search.bestCost);
  if (search.best !== undefined) improvePlan(search);
  if (search.best === undefined)
    throw new InputError("none", "stockQuantities", "no plan was found that the stock covers");
  const plan = grouped(gatherRemnants(search));
  const cost = recountPlan(problem, plan, search.bestCost);
  return { plan, cost, bound: Math.min(search.bound, cost), isProven: search.isProven };
}
