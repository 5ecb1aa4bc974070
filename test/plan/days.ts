import type { SawPlanInput, SawProblem } from "../../src/plan/sawProblem";

export interface TestJob {
  readonly minutes: readonly (number | null | undefined)[];
  readonly due?: number | null | undefined;
  readonly blade?: string | null | undefined;
}

export const dayOf = (jobs: readonly TestJob[], saws: number, change = 0): SawPlanInput => ({
  jobs: jobs.map((_, j) => `job ${j + 1}`),
  minutes: jobs.map(({ minutes }) => minutes.map((m) => m ?? undefined)),
  due: jobs.map(({ due }) => due ?? undefined),
  blade: jobs.map(({ blade }) => blade ?? undefined),
  saws,
  hours: undefined,
  change,
});

/** Lateness, finish and changes of a plan, counted apart from the core: a clock for each saw, in minutes. */
export function counted(
  jobs: readonly TestJob[],
  change: number,
  orders: readonly (readonly number[])[],
): readonly [late: number, end: number, changes: number] {
  let [late, end, changes] = [0, 0, 0];
  orders.forEach((order, saw) => {
    let clock = 0;
    let on = "";
    for (const j of order) {
      const { minutes, due, blade } = jobs[j]!;
      const needs = (blade ?? "").trim().toLowerCase();
      if (needs !== "" && on !== "" && needs !== on) {
        clock += change;
        changes += 1;
      }
      if (needs !== "") on = needs;
      const own = minutes.length === 1 ? minutes[0] : minutes[saw];
      clock += own ?? Infinity;
      if (due !== undefined && due !== null) late += Math.max(0, clock - 60 * due);
    }
    end = Math.max(end, clock);
  });
  return [late, end, changes];
}

/** The best of every plan of a small day: every job next on every saw. */
export function exhaustive(jobs: readonly TestJob[], saws: number, change: number): readonly number[] {
  let best: readonly number[] = [Infinity, Infinity, Infinity];
  const orders: number[][] = Array.from({ length: saws }, () => []);
  const isLess = (a: readonly number[], b: readonly number[]): boolean => {
    const i = a.findIndex((x, k) => Math.abs(x - b[k]!) > 1e-6);
    return i >= 0 && a[i]! < b[i]!;
  };
  const used = jobs.map(() => false);
  // Saw after saw, so that each plan comes up once.
  const go = (saw: number, left: number): void => {
    if (left === 0) {
      const got = counted(jobs, change, orders);
      if (isLess(got, best)) best = got;
      return;
    }
    if (saw + 1 < saws) go(saw + 1, left);
    jobs.forEach(({ minutes }, j) => {
      if (used[j]! || (minutes.length > 1 && (minutes[saw] ?? null) === null)) return;
      used[j] = true;
      orders[saw]!.push(j);
      go(saw, left - 1);
      orders[saw]!.pop();
      used[j] = false;
    });
  };
  go(0, jobs.length);
  return best;
}

/** A small day: 3 to 7 jobs on two saws, a quarter with minutes of their own for each saw. */
export function smallDay(next: () => number): { jobs: readonly TestJob[]; saws: number; change: number } {
  const whole = (most: number): number => Math.floor(next() * most);
  const count = 3 + whole(5);
  const isOwn = next() < 0.25;
  const blades = 1 + whole(3);
  const jobs = Array.from({ length: count }, (): TestJob => {
    const minutes = 5 + whole(56);
    const own = isOwn
      ? [next() < 0.15 ? null : minutes, Math.max(5, Math.round(minutes * (0.6 + next() * 0.8)))]
      : [minutes];
    return {
      minutes: own,
      due: next() < 0.2 ? null : (10 + whole(30 * count)) / 60,
      blade: next() < 0.1 ? null : `b${whole(blades)}`,
    };
  });
  return { jobs, saws: 2, change: whole(26) };
}

/** A day of 60 jobs on 8 saws, 6 blades, 12 minutes a change, a quarter due early, 60 % at the day's end. */
export function largeDay(next: () => number, load: number): { jobs: readonly TestJob[]; saws: number; change: number } {
  const raw = Array.from({ length: 60 }, () => 5 + 95 * next() ** 1.5);
  const day = raw.reduce((s, m) => s + m, 0) / 8 / load;
  const jobs = raw.map((minutes): TestJob => {
    const kind = next();
    const due = kind < 0.25 ? (0.2 + 0.6 * next()) * day : kind < 0.85 ? day : undefined;
    return {
      minutes: [Math.round(minutes)],
      due: due === undefined ? undefined : Math.max(minutes, due) / 60,
      blade: `b${Math.floor(6 * next())}`,
    };
  });
  return { jobs, saws: 8, change: 12 };
}

export const minutesOf = (time: number): number => time / 1000;
export const problemJobs = (problem: SawProblem): readonly number[] => [...problem.shortest.keys()];
