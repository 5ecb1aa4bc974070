import { cutPattern, type Pattern, type Plan } from "./cutPattern";
import type { CutProblem } from "./cutProblem";
import type { Open } from "./columnLp";

/** The longest open lengths first, as many of each as fit. */
function filledBar(problem: CutProblem, stock: number, demand: readonly number[]): Pattern | undefined {
  let room = problem.stocks[stock]!.capacity;
  const cuts = problem.widths.flatMap((width, i) => {
    const pieces = Math.min(demand[i]!, Math.floor(room / width));
    room -= Math.max(0, pieces) * width;
    return pieces > 0 ? [[i, pieces] as const] : [];
  });
  return cuts.length === 0 ? undefined : cutPattern(problem, stock, cuts);
}

/** The pattern of least cost per filled length. */
function cheapest(problem: CutProblem, demand: readonly number[], limits: readonly number[]): Pattern | undefined {
  const bars = problem.stocks.flatMap((_, s) => (limits[s]! > 0 ? (filledBar(problem, s, demand) ?? []) : []));
  return bars.reduce<Pattern | undefined>(
    (best, bar) => (best === undefined || bar.cost / bar.filled < best.cost / best.filled - 1e-15 ? bar : best),
    undefined,
  );
}

/**
 * A plan by first fit, longest first: the bar of least cost per filled length, as often as it goes, until nothing is open.
 * @param problem the order
 * @param open pieces and bars still open [-]
 * @returns patterns and times [-]; undefined where the stock runs out
 * @source first fit decreasing: common practice
 */
export function greedyPlan(problem: CutProblem, open: Open): Plan | undefined {
  const [demand, limits] = [[...open.demand], [...open.limits]];
  const plan: [Pattern, number][] = [];
  while (demand.some((pieces) => pieces > 0)) {
    const pattern = cheapest(problem, demand, limits);
    if (pattern === undefined) return undefined;
    const times = pattern.cuts.reduce(
      (most, [i, pieces]) => Math.min(most, Math.floor(demand[i]! / pieces)),
      limits[pattern.stock]!,
    );
    for (const [i, pieces] of pattern.cuts) demand[i]! -= times * pieces;
    limits[pattern.stock]! -= times;
    plan.push([pattern, times]);
  }
  return plan;
}
