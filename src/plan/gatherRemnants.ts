import { planConstants as k } from "../data/planConstants";
import { cutPattern, type Pattern, type Plan } from "./cutPattern";
import { knapsack } from "./knapsack";
import type { PlanSearch } from "./planSearch";

/** A gain below a micrometre is none [nm]. */
const least = 1000;

/** The same pieces on the same bars, the smaller bars filled first and as full as can be; undefined where not all find room. */
function repacked({ problem, work }: PlanSearch, bars: readonly Pattern[]): readonly Pattern[] | undefined {
  const { widths, stocks } = problem;
  const open = widths.map(() => 0);
  for (const { cuts } of bars) for (const [i, pieces] of cuts) open[i]! += pieces;
  const order = bars.map(({ stock }) => stock).sort((a, b) => stocks[a]!.capacity - stocks[b]!.capacity);
  const packed = order.map((stock) => {
    let fullest: Pattern["cuts"] = [];
    const { capacity } = stocks[stock]!;
    knapsack(
      { capacity, values: widths, widths, most: open, floor: 0, work, nodes: k.gatherNodes.value },
      (cuts) => (fullest = cuts),
    );
    for (const [i, pieces] of fullest) open[i]! -= pieces;
    return cutPattern(problem, stock, fullest);
  });
  return open.some((pieces) => pieces > 0) || packed.some(({ cuts }) => cuts.length === 0) ? undefined : packed;
}

/** Pairs and triples of the first places. */
const sets = (count: number): readonly (readonly number[])[] => {
  const all: number[][] = [];
  for (let i = 0; i < count; i += 1)
    for (let j = i + 1; j < count; j += 1)
      for (let l = j; l < Math.min(count, j + k.gatherReach.value); l += 1) all.push(l === j ? [i, j] : [i, j, l]);
  return all;
};

/**
 * Puts what is left over together, so that useful remnants grow: the emptiest bars are packed again by twos and threes;
 * number and cost of the bars stay.
 * @param search the best plan
 * @returns the plan with the greater useful remnants [-]
 * @source common practice, no source
 */
export function gatherRemnants(search: PlanSearch): Plan {
  const { useful } = search.problem;
  if (useful <= 0) return search.best!;
  const kept = (bars: readonly Pattern[]): number =>
    bars.reduce((sum, { left }) => sum + (left >= useful ? left : 0), 0);
  const bars = search.best!.flatMap(([pattern, times]) => Array.from({ length: times }, () => pattern));
  for (let round = 0; round < k.gatherRounds.value; round += 1) {
    bars.sort((p, q) => q.left - p.left || (p.key < q.key ? -1 : 1));
    const better = sets(Math.min(bars.length, k.gatherBars.value)).some((set) => {
      const old = set.map((i) => bars[i]!);
      const now = repacked(search, old);
      if (now === undefined || kept(now) <= kept(old) + least) return false;
      set.forEach((i, k) => (bars[i] = now[k]!));
      return true;
    });
    if (!better) break;
  }
  return bars.map((pattern) => [pattern, 1] as const);
}
