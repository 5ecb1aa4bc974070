import { planConstants as k } from "../data/planConstants";
import type { Pattern, Plan } from "./cutPattern";
import { unlimited, type CutProblem } from "./cutProblem";
import { columnLp, type LpResult, type Open, type PatternPool } from "./columnLp";
import type { Work } from "./planWork";

const closeness = 1e-6;
const roundOff = 1e-9;

export const planCost = (plan: Plan): number => plan.reduce((sum, [pattern, times]) => sum + times * pattern.cost, 0);

/** What all parts of the search share: the best plan so far, the bound, the patterns, the work. */
export class PlanSearch {
  best: Plan | undefined;
  bestCost = Infinity;
  readonly pool: PatternPool = new Map();
  readonly root: LpResult;
  bound: number;
  private cover: Float64Array | undefined;

  constructor(
    readonly problem: CutProblem,
    readonly work: Work,
    first: Plan | undefined,
  ) {
    if (first !== undefined) this.record(first);
    for (const [pattern] of first ?? []) this.keep(pattern);
    this.root = this.lp(this.all);
    this.bound = Math.max(0, this.roundedUp(this.root.bound));
    if (this.best !== undefined) {
      this.cover = this.coverTable();
      this.bound = Math.max(this.bound, this.coverOf(this.all.demand));
    }
  }

  get all(): Open {
    return { demand: this.problem.demand, limits: this.problem.stocks.map(({ limit }) => limit) };
  }

  get isProven(): boolean {
    return this.bestCost <= this.bound + closeness * this.problem.grain;
  }

  get isDone(): boolean {
    return this.isProven || this.work.isOver;
  }

  lp(open: Open): LpResult {
    return columnLp(this.problem, open, this.pool, this.work);
  }

  record(plan: Plan): void {
    const cost = planCost(plan);
    if (cost >= this.bestCost - roundOff) return;
    this.bestCost = cost;
    this.best = plan;
  }

  keep(pattern: Pattern): Pattern {
    const known = this.pool.get(pattern.key);
    if (known === undefined) this.pool.set(pattern.key, pattern);
    return known ?? pattern;
  }

  /** Every cost is a whole multiple of the grain. */
  roundedUp(cost: number): number {
    return Math.ceil(cost / this.problem.grain - closeness) * this.problem.grain;
  }

  private worthOf(demand: readonly number[]): number {
    return demand.reduce((sum, pieces, i) => sum + pieces * (this.root.duals?.piece[i] ?? 0), 0);
  }

  /** Most worth that whole bars of each cost can hold: bars are whole, and a bar holds at most its share. */
  private coverTable(): Float64Array | undefined {
    const { duals } = this.root;
    const { stocks, grain } = this.problem;
    const units = Math.round(this.bestCost / grain);
    if (duals === undefined || !(units <= k.coverUnits.value)) return undefined;
    const most = new Float64Array(units + 1).fill(-1);
    most[0] = 0;
    stocks.forEach(({ cost, limit }, s) => {
      const step = Math.round(cost / grain);
      const worth = duals.bar[s]! * (1 + 1e-10) + roundOff;
      const better = (q: number): void => {
        if (most[q - step]! >= 0) most[q] = Math.max(most[q]!, most[q - step]! + worth);
      };
      if (limit >= unlimited / 10 || limit * step >= units) for (let q = step; q <= units; q += 1) better(q);
      else for (let k = 0; k < limit; k += 1) for (let q = units; q >= step; q -= 1) better(q);
    });
    for (let q = 1; q <= units; q += 1) most[q] = Math.max(most[q]!, most[q - 1]!);
    this.work.add(units);
    return most;
  }

  /** The least cost of whole bars that can hold what is open. */
  private coverOf(demand: readonly number[]): number {
    const worth = this.worthOf(demand) * (1 - roundOff);
    const { cover } = this;
    if (cover === undefined || worth <= roundOff) return 0;
    let [low, high] = [0, cover.length - 1];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (cover[middle]! >= worth) high = middle;
      else low = middle + 1;
    }
    return low * this.problem.grain;
  }

  /** No way to cut what is open costs less. */
  leastFor({ demand, limits }: Open): number {
    const pieces = demand.reduce((sum, count) => sum + count, 0);
    const stock = this.root.duals?.stock ?? [];
    const limited = stock.reduce((sum, value, s) => sum + value * Math.min(limits[s]!, pieces), 0);
    return Math.max(this.worthOf(demand) + limited, this.coverOf(demand));
  }
}
