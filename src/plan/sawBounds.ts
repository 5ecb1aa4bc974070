import { latenessBound } from "./latenessBound";
import type { SawProblem } from "./sawProblem";

/** Each by itself: no plan is less late, ends earlier, or changes blades less often. */
export interface SawBounds {
  readonly late: number;
  readonly end: number;
  readonly changes: number;
}

const sum = (list: readonly number[]): number => list.reduce((all, each) => all + each, 0);

/** Fewest blades that any 1, 2, 3… of these jobs need. */
function fewestBlades({ blade, blades }: SawProblem, jobs: readonly number[]): readonly number[] {
  const counts = new Array<number>(blades).fill(0);
  let room = 0;
  for (const job of jobs)
    if (blade[job]! >= 0) counts[blade[job]!]! += 1;
    else room += 1;
  counts.sort((a, b) => b - a);
  let used = 0;
  return jobs.map((_, i) => {
    while (room < i + 1 && used < blades) {
      room += counts[used]!;
      used += 1;
    }
    return used;
  });
}

/** Lateness of the first jobs by due date: the k-th finish is at least the k shortest, with their changes, over all saws. */
function earlyJobs(problem: SawProblem, jobs: readonly number[]): number {
  const { shortest, due, saws, change } = problem;
  const blades = fewestBlades(problem, jobs);
  const minutes = jobs.map((job) => shortest[job]!).sort((a, b) => a - b);
  let worked = 0;
  return sum(
    minutes.map((own, i) => {
      worked += own;
      const end = Math.max(own, Math.ceil((worked + change * Math.max(0, blades[i]! - saws)) / saws));
      return Math.max(0, end - due[jobs[i]!]!);
    }),
  );
}

function earliestEnd({ shortest, saws, change }: SawProblem, changes: number): number {
  const longest = [...shortest].sort((a, b) => b - a);
  const two = longest.length > saws ? longest[saws - 1]! + longest[saws]! : 0;
  return Math.max(Math.ceil((sum(shortest) + changes * change) / saws), longest[0]!, two);
}

/**
 * Bounds of a day: lateness by each job alone, by the first jobs by due date, and by latenessBound; finish by all work over
 * all saws, by the longest job and by two that must share a saw; changes = blades − saws.
 * @param problem the day
 * @param upper lateness of a plan [min/1000]
 * @returns late and end [min/1000], changes [-]
 * @source sorted finishes against sorted due dates: derived; finish: Graham 1969 (from memory)
 */
export function sawBounds(problem: SawProblem, upper: number): SawBounds {
  const { due, shortest, saws, blades } = problem;
  const changes = Math.max(0, blades - saws);
  const wanted = [...due.keys()].filter((job) => due[job]! < Infinity).sort((a, b) => due[a]! - due[b]!);
  const alone = sum(wanted.map((job) => Math.max(0, shortest[job]! - due[job]!)));
  const early = wanted.map((_, k) => earlyJobs(problem, wanted.slice(0, k + 1)));
  const late = Math.max(alone, ...early);
  return {
    late: upper > late ? Math.max(late, latenessBound(problem, wanted, upper)) : late,
    end: earliestEnd(problem, changes),
    changes,
  };
}
