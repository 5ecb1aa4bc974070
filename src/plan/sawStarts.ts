import { planConstants as k } from "../data/planConstants";
import type { SawProblem } from "./sawProblem";

type Orders = readonly (readonly number[])[];

/** The saws while a plan is made: their jobs, when they are free, the blade that is on. */
class Bay {
  readonly orders: number[][];
  readonly free: number[];
  private readonly on: number[];

  constructor(private readonly problem: SawProblem) {
    this.orders = Array.from({ length: problem.saws }, () => []);
    this.free = this.orders.map(() => 0);
    this.on = this.orders.map(() => -1);
  }

  isChange(saw: number, job: number): boolean {
    const needs = this.problem.blade[job]!;
    return needs >= 0 && this.on[saw]! >= 0 && this.on[saw] !== needs;
  }

  endOf(saw: number, job: number): number {
    return this.free[saw]! + (this.isChange(saw, job) ? this.problem.change : 0) + this.problem.minutes[saw]![job]!;
  }

  give(saw: number, job: number): void {
    this.free[saw] = this.endOf(saw, job);
    if (this.problem.blade[job]! >= 0) this.on[saw] = this.problem.blade[job]!;
    this.orders[saw]!.push(job);
  }
}

/** Each job of a list to the saw where it ends first; with equal ends where no blade is changed. */
function listed(problem: SawProblem, jobs: readonly number[]): Orders {
  const bay = new Bay(problem);
  for (const job of jobs) {
    let [saw, end] = [0, Infinity];
    for (let s = 0; s < problem.saws; s += 1) {
      const ends = bay.endOf(s, job) + (bay.isChange(s, job) ? 1e-3 : 0);
      if (ends < end) [saw, end] = [s, ends];
    }
    bay.give(saw, job);
  }
  return bay.orders;
}

/** Apparent tardiness with set-ups: the saw that is free first takes what is most urgent for its minutes and its blade. */
function byUrgency(problem: SawProblem, slackScale: number, changeScale: number): Orders | undefined {
  const bay = new Bay(problem);
  const left = new Set(problem.shortest.keys());
  const open = new Set(bay.orders.keys());
  const mean = problem.shortest.reduce((sum, minutes) => sum + minutes, 0) / problem.jobs;
  const urgency = (saw: number, job: number): number => {
    const minutes = problem.minutes[saw]![job]!;
    const due = problem.due[job]!;
    const slack = due === Infinity ? k.farSlack.value * mean : Math.max(0, due - minutes - bay.free[saw]!);
    const change = bay.isChange(saw, job) ? 1 / changeScale : 0;
    return Math.exp(-slack / (slackScale * mean) - change) / Math.max(1, minutes);
  };
  while (left.size > 0 && open.size > 0) {
    const saw = [...open].reduce((a, b) => (bay.free[b]! < bay.free[a]! ? b : a));
    let [chosen, most] = [-1, -1];
    for (const job of left) {
      if (problem.minutes[saw]![job] === Infinity) continue;
      const own = urgency(saw, job);
      if (own > most) [chosen, most] = [job, own];
    }
    if (chosen < 0) open.delete(saw);
    else {
      left.delete(chosen);
      bay.give(saw, chosen);
    }
  }
  return left.size > 0 ? undefined : bay.orders;
}

/** Keys compared one after the other; the first row first where all are equal. */
function sorted(problem: SawProblem, keys: (job: number) => readonly number[]): readonly number[] {
  const of = problem.shortest.map((_, job) => keys(job));
  return [...of.keys()].sort((a, b) => {
    const i = of[a]!.findIndex((key, k) => key !== of[b]![k]);
    return i < 0 ? a - b : of[a]![i]! < of[b]![i]! ? -1 : 1;
  });
}

/** Scales of the urgency rule: of the time left, each twice the one before, and of a change of blade. */
const slackScales = [1, 2, 2 * 2, 2 * 2 * 2].map((times) => times * k.slackScale.value);
const changeScales = [k.changeSmall.value, k.changeMiddle.value, k.changeLarge.value];

/**
 * Plans to begin with: lists by due date, shortest, longest, slack and blade; and the rule of apparent tardiness with
 * set-ups at several scales.
 * @param problem the day
 * @returns jobs by saw in their order [-]
 * @source list scheduling: Graham 1966; apparent tardiness cost with set-ups: Lee, Bhaskaran and Pinedo 1997 (both from memory)
 */
export function sawStarts(problem: SawProblem): readonly Orders[] {
  const { due, shortest, blade } = problem;
  const first = new Map<number, number>();
  blade.forEach((b, job) => first.set(b, Math.min(first.get(b) ?? Infinity, due[job]!)));
  const lists = [
    sorted(problem, (job) => [due[job]!, shortest[job]!]),
    sorted(problem, (job) => [shortest[job]!]),
    sorted(problem, (job) => [-shortest[job]!]),
    sorted(problem, (job) => [due[job]! - shortest[job]!]),
    sorted(problem, (job) => [first.get(blade[job]!)!, blade[job]!, due[job]!]),
    sorted(problem, (job) => [blade[job]!, -shortest[job]!]),
  ];
  const urgent = slackScales.flatMap((slack) =>
    changeScales.flatMap((change) => {
      const orders = byUrgency(problem, slack, change);
      return orders === undefined ? [] : [orders];
    }),
  );
  return [...lists.map((list) => listed(problem, list)), ...urgent];
}
