import { planConstants as k } from "../data/planConstants";
import type { Pattern, Plan } from "./cutPattern";
import type { Open } from "./columnLp";
import { divePlan } from "./divePlan";
import { exactPlan } from "./exactPlan";
import { Chance } from "../statistics/chance";
import type { PlanSearch } from "./planSearch";

/** The worst bars of a plan, and some others: much left over, dear, or by chance. */
function freedBars({ problem, best }: PlanSearch, count: number, chance: Chance): ReadonlyMap<Pattern, number> {
  const bars = best!.flatMap(([pattern, times]) =>
    Array.from({ length: Math.min(times, k.improveAlike.value) }, () => pattern),
  );
  const scored = bars.map((pattern, place) => {
    const share = pattern.left / problem.stocks[pattern.stock]!.room;
    return {
      pattern,
      place,
      score: pattern.cost * (k.improveByChance.value + chance.next() + k.improveByLoss.value * share),
    };
  });
  scored.sort((p, q) => q.score - p.score || p.place - q.place);
  const freed = new Map<Pattern, number>();
  for (const { pattern } of scored.slice(0, count)) freed.set(pattern, (freed.get(pattern) ?? 0) + 1);
  return freed;
}

/** The plan without these bars, and what is open then. */
function without(
  { best, all }: PlanSearch,
  freed: ReadonlyMap<Pattern, number>,
): { readonly fixed: Plan; readonly open: Open } {
  const left = new Map(freed);
  const fixed = best!.flatMap(([pattern, times]): Plan => {
    const gone = Math.min(times, left.get(pattern) ?? 0);
    left.set(pattern, (left.get(pattern) ?? 0) - gone);
    return times > gone ? [[pattern, times - gone]] : [];
  });
  const [demand, limits] = [[...all.demand], [...all.limits]];
  for (const [{ cuts, stock }, times] of fixed) {
    for (const [i, pieces] of cuts) demand[i] = Math.max(0, demand[i]! - times * pieces);
    limits[stock]! -= times;
  }
  return { fixed, open: { demand, limits } };
}

/**
 * Frees the worst bars of the best plan and plans them again, by a dive or by looking at every way, until nothing has come
 * of it for long.
 * @param search the best plan so far; takes the better ones
 * @returns nothing [-]
 * @source large neighbourhood search: common practice
 */
export function improvePlan(search: PlanSearch): void {
  const chance = new Chance(k.chanceSeed.value);
  let stale = 0;
  for (let round = 0; round < k.improveRounds.value && stale < k.improveStale.value && !search.isDone; round += 1) {
    const isSmall = round % 2 === 1;
    const count = isSmall
      ? k.improveFew.value + ((round >> 1) % k.improveSpan.value)
      : k.improveMany.value + (round % 10) * 2;
    const { fixed, open } = without(search, freedBars(search, count, chance));
    const before = search.bestCost;
    if (isSmall) exactPlan(search, open, fixed, k.improveNodes.value);
    else divePlan(search, open, fixed, 0);
    stale = search.bestCost < before ? 0 : stale + 1;
  }
}
