import { planConstants as k } from "../data/planConstants";
import { cutPattern, type Pattern } from "./cutPattern";
import { unlimited, type CutProblem } from "./cutProblem";
import { knapsack } from "./knapsack";
import type { Work } from "./planWork";
import { SimplexBasis, type Column } from "./simplexBasis";

/** Patterns by their key; the ones found so far serve every later programme. */
export type PatternPool = Map<string, Pattern>;

/** What is open: pieces by length, bars by stock. */
export interface Open {
  readonly demand: readonly number[];
  readonly limits: readonly number[];
}

export interface Duals {
  /** Worth of a piece of each length [cost]. */
  readonly piece: readonly number[];
  /** Most that a bar of each stock can hold of it [cost]. */
  readonly bar: readonly number[];
  /** What a bar of a limited stock is worth beyond its cost, 0 or below [cost]. */
  readonly stock: readonly number[];
}

export interface LpResult {
  readonly patterns: readonly (readonly [pattern: Pattern, times: number])[];
  /** No plan costs less [cost]. */
  readonly bound: number;
  readonly duals: Duals | undefined;
  /** The stock does not cover what is open. */
  readonly isShort: boolean;
}

const closeness = 1e-9;
const taken = 1e-6;
const missing = 1e-5;

type Col = Column<Pattern>;

/** Small different amounts on the right side keep the simplex method from going in circles. */
const nudged = (value: number, i: number): number =>
  value + (1e-7 * ((i * k.nudgeStep.value) % k.nudgeSpan.value)) / k.nudgeSpan.value;

class Programme {
  private readonly basis: SimplexBasis<Pattern>;
  private readonly columns: Col[] = [];
  private readonly known = new Set<string>();
  private readonly loose: readonly Col[];
  private readonly tolerance: number;
  bound = -Infinity;
  duals: Duals | undefined;

  constructor(
    private readonly problem: CutProblem,
    private readonly open: Open,
    private readonly pool: PatternPool,
    private readonly work: Work,
  ) {
    const { stocks, widths } = problem;
    const n = widths.length;
    const dear = k.lpPenalty.value * Math.max(...stocks.map(({ cost, capacity }) => cost / Math.max(1, capacity)));
    const none = undefined;
    const artificial = widths.map((width, i): Col => ({
      cost: dear * width,
      rows: [[i, 1]],
      means: none,
      artificial: true,
    }));
    const slack = stocks.map((_, s): Col => ({ cost: 0, rows: [[n + s, 1]], means: none }));
    this.loose = [...slack, ...widths.map((_, i): Col => ({ cost: 0, rows: [[i, -1]], means: none }))];
    const rightSide = [...open.demand.map(nudged), ...open.limits.map((limit) => Math.min(limit, unlimited))];
    this.basis = new SimplexBasis([...artificial, ...slack], rightSide, work);
    this.tolerance = closeness * Math.max(...stocks.map(({ cost }) => cost));
    for (const pattern of pool.values()) this.take(pattern);
  }

  /** A pattern joins the columns, if it cuts no more than is open. */
  private take(pattern: Pattern): boolean {
    const { demand, limits } = this.open;
    if (this.known.has(pattern.key) || limits[pattern.stock]! <= 0) return false;
    if (pattern.cuts.some(([i, pieces]) => pieces > demand[i]!)) return false;
    this.known.add(pattern.key);
    const rows = [...pattern.cuts, [this.problem.widths.length + pattern.stock, 1] as const];
    this.columns.push({ cost: pattern.cost, rows, means: pattern });
    return true;
  }

  /** The column that saves most at these duals. */
  private entering(duals: Float64Array): Col | undefined {
    let [best, saving] = [undefined as Col | undefined, -this.tolerance * 10];
    for (const column of [...this.columns, ...this.loose]) {
      const reduced = column.rows.reduce((sum, [row, by]) => sum - duals[row]! * by, column.cost);
      if (reduced < saving) [best, saving] = [column, reduced];
    }
    this.work.add(this.columns.length / k.columnShare.value);
    return best;
  }

  /** Looks for patterns that save something, and for the bound that these duals prove; whether any pattern is new. */
  private price(duals: Float64Array): boolean {
    const { stocks, widths } = this.problem;
    const { demand, limits } = this.open;
    const piece = widths.map((_, i) => Math.max(0, duals[i]!));
    let isNew = false;
    const bar = stocks.map(({ capacity, cost }, s) => {
      if (limits[s]! <= 0) return 0;
      const floor = cost - duals[widths.length + s]! + this.tolerance;
      return knapsack({ capacity, values: piece, widths, most: demand, floor, work: this.work }, (cuts) => {
        const found = cutPattern(this.problem, s, cuts);
        const pattern = this.pool.get(found.key) ?? found;
        this.pool.set(pattern.key, pattern);
        isNew = this.take(pattern) || isNew;
      });
    });
    this.prove(piece, bar);
    return isNew;
  }

  /** Farley's bound where a stock has no limit, the Lagrangian one where it has. */
  private prove(piece: readonly number[], bar: readonly number[]): void {
    const { stocks } = this.problem;
    const { demand, limits } = this.open;
    const isLimited = (s: number): boolean => limits[s]! < unlimited / 10;
    const worst = Math.max(1, ...stocks.map(({ cost }, s) => (limits[s]! > 0 && !isLimited(s) ? bar[s]! / cost : 0)));
    const stock = stocks.map(({ cost }, s) =>
      limits[s]! > 0 && isLimited(s) ? Math.min(0, cost - bar[s]! / worst) : 0,
    );
    const pieces = demand.reduce((sum, quantity) => sum + quantity, 0);
    const covered = piece.reduce((sum, value, i) => sum + (value * demand[i]!) / worst, 0);
    const bound = stock.reduce((sum, value, s) => sum + value * Math.min(limits[s]!, pieces), covered);
    if (bound <= this.bound) return;
    this.bound = bound;
    this.duals = { piece: piece.map((value) => value / worst), bar: bar.map((value) => value / worst), stock };
  }

  solve(): LpResult {
    for (let round = 0; round < k.lpRounds.value; round += 1) {
      const duals = this.basis.duals();
      const column = this.entering(duals);
      if (column !== undefined) {
        if (!this.basis.enter(column)) break;
      } else if (this.work.isOver || !this.price(duals)) break;
    }
    const solution = this.basis.solution();
    return {
      patterns: solution.flatMap(([{ means }, times]) =>
        means !== undefined && times > taken ? [[means, times] as const] : [],
      ),
      bound: this.bound,
      duals: this.duals,
      isShort: solution.some(([{ artificial }, value]) => artificial === true && value > missing),
    };
  }
}

/**
 * The cutting-stock problem in parts of bars: minimise Σ cost·x over all patterns, each length covered, no stock beyond its
 * limit. Patterns are made as they are wanted (column generation): the simplex method gives the worth of each piece, the
 * knapsack the pattern that holds most of it. A bound is proven at every step.
 * @param problem the order
 * @param open pieces and bars still open [-]
 * @param pool patterns known so far; the new ones join it
 * @param work limit of the work
 * @returns patterns and times [-], the bound [cost], the duals [cost], whether the stock is short
 * @source P. C. Gilmore and R. E. Gomory 1961; bound of A. A. Farley 1990 (both from memory)
 */
export function columnLp(problem: CutProblem, open: Open, pool: PatternPool, work: Work): LpResult {
  return new Programme(problem, open, pool, work).solve();
}
