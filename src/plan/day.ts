import { planConstants as k } from "../data/planConstants";
import type { Work } from "./planWork";
import type { SawProblem } from "./sawProblem";
import { sawRun, type SawRun } from "./sawRun";

/** In the order in which they count: lateness, finish of the last saw, changes, Σ end² of the saws, Σ finishes. */
export type Goals = readonly [late: number, end: number, changes: number, balance: number, flow: number];

const perSquare = 1e6;
const closeness = 1e-9;

/** Whether the first goals are better; sums of squares of nearly the same size are the same. */
export const isBetter = (a: Goals, b: Goals): boolean => {
  for (let i = 0; i < a.length; i += 1) {
    // The balance is the last but one.
    const slack = i + 2 === a.length ? closeness * Math.abs(b[i]!) : 0;
    if (a[i]! < b[i]! - slack) return true;
    if (a[i]! > b[i]! + slack) return false;
  }
  return false;
};

const none: SawRun = { late: 0, changes: 0, end: 0, flow: 0 };
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

  /** Goals with other runs on one or two saws; undefined where the first two say that they are worse. */
  private tried(first: number, one: SawRun, second: number, two: SawRun): Goals | undefined {
    const { runs, goals } = this;
    const [before, other] = [runs[first]!, second === first ? none : runs[second]!];
    const late = goals[0] - before.late - other.late + one.late + two.late;
    // Most moves make more late: they end here, and so does a job on a saw that cannot make it.
    if (!(late <= goals[0])) return undefined;
    let end = Math.max(one.end, two.end);
    for (let saw = 0; saw < runs.length; saw += 1)
      if (saw !== first && saw !== second && runs[saw]!.end > end) end = runs[saw]!.end;
    if (end === Infinity || (late === goals[0] && end > goals[1])) return undefined;
    const squares = one.end * one.end + two.end * two.end - before.end * before.end - other.end * other.end;
    return [
      late,
      end,
      goals[2] - before.changes - other.changes + one.changes + two.changes,
      goals[3] + squares / perSquare,
      goals[4] - before.flow - other.flow + one.flow + two.flow,
    ];
  }

  /** Gives one or two saws other jobs, where that is better. */
  take(work: Work, first: number, jobs: readonly number[], second = first, others: readonly number[] = []): boolean {
    const { problem, runs } = this;
    work.add(jobs.length + others.length + k.moveWork.value);
    const one = sawRun(problem, first, jobs);
    const two = second === first ? none : sawRun(problem, second, others);
    const goals = this.tried(first, one, second, two);
    if (goals === undefined || !isBetter(goals, this.goals)) return false;
    runs[first] = one;
    this.orders[first] = jobs;
    if (second !== first) {
      runs[second] = two;
      this.orders[second] = others;
    }
    // Anew, so that nothing adds up.
    this.goals = goalsOf(runs);
    return true;
  }
}
