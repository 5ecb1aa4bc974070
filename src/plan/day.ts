import type { Work } from "./planWork";
import type { SawProblem } from "./sawProblem";
import { sawRun, type SawRun } from "./sawRun";

/** In the order in which they count: lateness, finish of the last saw, changes, Σ end² of the saws, Σ finishes. */
export type Goals = readonly [late: number, end: number, changes: number, balance: number, flow: number];

const perSquare = 1e6;
const closeness = 1e-9;
/** What an evaluation costs besides its jobs. */
const perMove = 6;

/** Whether the first goals are better; sums of squares of nearly the same size are the same. */
export const isBetter = (a: Goals, b: Goals): boolean => {
  for (let i = 0; i < a.length; i += 1) {
    const slack = i === 3 ? closeness * Math.abs(b[i]) : 0;
    if (a[i]! < b[i]! - slack) return true;
    if (a[i]! > b[i]! + slack) return false;
  }
  return false;
};

const goalsOf = (runs: readonly SawRun[]): Goals => {
  let [late, end, changes, balance, flow] = [0, 0, 0, 0, 0];
  for (const run of runs) {
    late += run.late;
    end = Math.max(end, run.end);
    changes += run.changes;
    balance += (run.end * run.end) / perSquare;
    flow += run.flow;
  }
  return [late, end, changes, balance, flow];
};

/** Which jobs each saw makes in which order, with what that comes to. */
export class Day {
  readonly orders: (readonly number[])[];
  private readonly runs: SawRun[];
  goals: Goals;

  constructor(
    readonly problem: SawProblem,
    orders: readonly (readonly number[])[],
  ) {
    this.orders = [...orders];
    this.runs = orders.map((jobs, saw) => sawRun(problem, saw, jobs));
    this.goals = goalsOf(this.runs);
  }

  /** Whether every saw can make what it has. */
  get isPossible(): boolean {
    return this.goals[1] < Infinity;
  }

  /** Gives one or two saws other jobs, where that is better. */
  take(work: Work, first: number, jobs: readonly number[], second?: number, others: readonly number[] = []): boolean {
    const { problem, runs } = this;
    work.add(jobs.length + others.length + perMove);
    const one = sawRun(problem, first, jobs);
    const two = second === undefined ? undefined : sawRun(problem, second, others);
    const late = one.late - runs[first]!.late + (two === undefined ? 0 : two.late - runs[second!]!.late);
    // Most moves make more late: they end here, and so does a job on a saw that cannot make it.
    if (!(late <= 0) || one.end === Infinity || two?.end === Infinity) return false;
    const all = [...runs];
    all[first] = one;
    if (two !== undefined) all[second!] = two;
    const goals = goalsOf(all);
    if (!isBetter(goals, this.goals)) return false;
    this.goals = goals;
    runs[first] = one;
    this.orders[first] = jobs;
    if (two === undefined) return true;
    runs[second!] = two;
    this.orders[second!] = others;
    return true;
  }
}
