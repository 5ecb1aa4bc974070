import { planConstants as k } from "../data/planConstants";
import { cutPattern, type Pattern, type Plan } from "./cutPattern";
import type { Open } from "./columnLp";
import type { PlanSearch } from "./planSearch";

const closeness = 1e-6;
const roundOff = 1e-9;

/** Bars that are filled until nothing open fits in any more, with at least one piece of the longest open length. */
function fullBars({ problem }: PlanSearch, { demand, limits }: Open, first: number): readonly Pattern[] | undefined {
  const found: Pattern[] = [];
  const fill = (stock: number, i: number, room: number, cuts: Pattern["cuts"], narrowest: number): boolean => {
    if (found.length > k.exactPatterns.value) return false;
    if (i === demand.length) {
      if (room < narrowest) found.push(cutPattern(problem, stock, cuts));
      return true;
    }
    const width = problem.widths[i]!;
    const most = Math.min(demand[i]!, Math.floor(room / width));
    for (let pieces = most; pieces >= (i === first ? 1 : 0); pieces -= 1) {
      // What is left out here must not fit in at the end.
      const left = pieces < demand[i]! ? Math.min(narrowest, width) : narrowest;
      if (!fill(stock, i + 1, room - pieces * width, pieces > 0 ? [...cuts, [i, pieces]] : cuts, left)) return false;
    }
    return true;
  };
  const isWhole = problem.stocks.every(
    ({ capacity }, s) => limits[s]! <= 0 || problem.widths[first]! > capacity || fill(s, first, capacity, [], Infinity),
  );
  return isWhole ? found : undefined;
}

class ExactSearch {
  private nodes = 0;
  private readonly seen = new Map<string, number>();
  isOver = false;

  constructor(
    private readonly search: PlanSearch,
    private readonly most: number,
  ) {}

  private reduced({ cuts, cost, stock }: Pattern): number {
    const { duals } = this.search.root;
    return cuts.reduce((sum, [i, pieces]) => sum - duals!.piece[i]! * pieces, cost - duals!.stock[stock]!);
  }

  /** The bar of the longest open length, pattern by pattern. */
  go({ demand, limits }: Open, cost: number, plan: Plan): void {
    const { search } = this;
    this.nodes += 1;
    if (this.nodes > this.most || search.work.isOver) this.isOver = true;
    if (this.isOver) return;
    const first = demand.findIndex((pieces) => pieces > 0);
    if (first < 0) {
      search.record(plan);
      return;
    }
    const key = `${demand.join()}|${limits.join()}`;
    if ((this.seen.get(key) ?? Infinity) <= cost + roundOff) return;
    this.seen.set(key, cost);
    const bars = fullBars(search, { demand, limits }, first);
    if (bars === undefined) {
      this.isOver = true;
      return;
    }
    search.work.add(bars.length * k.patternWork.value);
    this.branch(bars, { demand, limits }, cost, plan);
  }

  private branch(bars: readonly Pattern[], { demand, limits }: Open, cost: number, plan: Plan): void {
    const { search } = this;
    const sorted = [...bars].sort((p, q) => this.reduced(p) - this.reduced(q) || (p.key < q.key ? -1 : 1));
    for (const bar of sorted) {
      const open = { demand: [...demand], limits: limits.map((limit, s) => (s === bar.stock ? limit - 1 : limit)) };
      for (const [i, pieces] of bar.cuts) open.demand[i]! -= pieces;
      const least = cost + bar.cost + search.leastFor(open);
      if (least > search.bestCost - search.problem.grain * (1 - closeness)) continue;
      this.go(open, cost + bar.cost, [...plan, [bar, 1]]);
      if (this.isOver || search.isProven) return;
    }
  }
}

/**
 * Every way to cut what is open, bar by bar, without those that the bound rules out.
 * @param search records every plan that is better
 * @param open pieces and bars still open [-]
 * @param fixed bars of the plan that stay
 * @param most nodes of the search [-]
 * @returns whether every way was looked at [-]
 * @source branch and bound: common practice
 */
export function exactPlan(search: PlanSearch, open: Open, fixed: Plan, most: number): boolean {
  if (search.root.duals === undefined) return false;
  const exact = new ExactSearch(search, most);
  exact.go(
    open,
    fixed.reduce((sum, [pattern, times]) => sum + times * pattern.cost, 0),
    fixed,
  );
  return !exact.isOver;
}
