import { planConstants as k } from "../data/planConstants";
import { perMinute, type SawProblem } from "./sawProblem";

const roundOff = 1e-3;

/** The jobs with a due date on a grid of whole steps, shortened to it. */
interface Grid {
  readonly step: number;
  readonly length: number;
  readonly minutes: readonly number[];
  readonly due: readonly number[];
}

function gridOf({ shortest, due, saws }: SawProblem, jobs: readonly number[]): Grid {
  const own = jobs.map((job) => shortest[job]!);
  const horizon = own.reduce((sum, minutes) => sum + minutes, 0) / saws + Math.max(...own);
  let step = perMinute;
  while ((horizon / step) * jobs.length > k.boundCells.value) step *= 2;
  return {
    step,
    length: Math.ceil(horizon / step) + 1,
    minutes: own.map((minutes) => Math.floor(minutes / step)),
    due: jobs.map((job) => due[job]! / step),
  };
}

/** Cheapest start of a job where each step costs its price and lateness itself; prices are summed from the start. */
function cheapest(minutes: number, due: number, paid: Float64Array): readonly [cost: number, start: number] {
  let [least, at] = [Infinity, 0];
  for (let start = 0; start + minutes < paid.length; start += 1) {
    const end = start + minutes;
    const cost = Math.max(0, end - due) + paid[end]! - paid[start]!;
    if (cost < least - 1e-12) [least, at] = [cost, start];
  }
  return [least, at];
}

/** Prices of the steps and how many saws each would need. */
class Prices {
  private readonly price: Float64Array;
  private readonly paid: Float64Array;
  private readonly used: Int32Array;

  constructor(
    private readonly grid: Grid,
    private readonly saws: number,
  ) {
    this.price = new Float64Array(grid.length);
    this.paid = new Float64Array(grid.length + 1);
    this.used = new Int32Array(grid.length + 1);
  }

  /** What the jobs cost at these prices, less what all saws earn: no plan is less late. */
  value(): number {
    const { grid, price, paid, used } = this;
    for (let t = 0; t < grid.length; t += 1) paid[t + 1] = paid[t]! + price[t]!;
    used.fill(0);
    let value = -this.saws * paid[grid.length]!;
    grid.minutes.forEach((minutes, k) => {
      const [cost, start] = cheapest(minutes, grid.due[k]!, paid);
      value += cost;
      used[start]! += 1;
      used[start + minutes]! -= 1;
    });
    return value;
  }

  /** Dearer where too many saws are wanted, cheaper where some are free; false where nothing is wanted otherwise. */
  move(gap: number): boolean {
    const { price, used, saws } = this;
    const over = new Float64Array(price.length);
    let [running, squares] = [0, 0];
    for (let t = 0; t < price.length; t += 1) {
      running += used[t]!;
      over[t] = running < saws && price[t] === 0 ? 0 : running - saws;
      squares += over[t]! ** 2;
    }
    if (squares === 0) return false;
    for (let t = 0; t < price.length; t += 1) price[t] = Math.max(0, price[t]! + (gap / squares) * over[t]!);
    return true;
  }
}

/**
 * A bound of the total lateness: each job starts where it is cheapest at prices of the saws' time (Lagrangian relaxation of
 * the saws, improved by subgradients); changes of blade are left out, minutes are the least of all saws.
 * @param problem the day
 * @param jobs those with a due date
 * @param upper lateness of a plan [min/1000]
 * @returns no plan is less late than this [min/1000]
 * @source Lagrangian bound of the time-indexed formulation: common practice
 */
export function latenessBound(problem: SawProblem, jobs: readonly number[], upper: number): number {
  if (jobs.length === 0) return 0;
  const grid = gridOf(problem, jobs);
  const prices = new Prices(grid, problem.saws);
  let [best, scale, stale] = [0, 1, 0];
  for (let round = 0; round < k.boundRounds.value; round += 1) {
    const value = prices.value();
    stale = value > best + 1e-9 ? 0 : stale + 1;
    best = Math.max(best, value);
    if (stale > k.boundPatience.value) [scale, stale] = [scale * k.boundShorter.value, 0];
    if (!prices.move(scale * Math.max(1e-3, upper / grid.step - value))) break;
  }
  return Math.max(0, Math.ceil(best * grid.step - roundOff));
}
