import { Day, isBetter } from "./day";
import { descendDay } from "./descendDay";
import { Chance, Work } from "./planWork";
import { sawBounds, type SawBounds } from "./sawBounds";
import type { SawProblem } from "./sawProblem";
import { sawStarts } from "./sawStarts";

/** About 0.3 s of a usual machine for 60 jobs on 8 saws; counted in jobs that are gone through. */
const mostWork = 1.6e7;
const starts = 5;
const shareOfStart = 0.15;
const few = 12;
const roundsOfFew = 200;
const backAfter = 60;
const seed = 4711;
const fewestMoves = 2;
const moreMoves = 4;
const longestMoved = 3;

export interface BestDay {
  readonly day: Day;
  readonly bounds: SawBounds;
}

/** A few jobs or blocks moved at random, each to a saw that can make it. */
function shaken({ problem, orders }: Day, chance: Chance): Day {
  const pick = (count: number): number => Math.floor(chance.next() * count);
  const moved = orders.map((jobs) => [...jobs]);
  for (let move = fewestMoves + pick(moreMoves); move > 0; move -= 1) {
    let saw = pick(problem.saws);
    while (moved[saw]!.length === 0) saw = (saw + 1) % problem.saws;
    const at = pick(moved[saw]!.length);
    const block = moved[saw]!.splice(at, pick(longestMoved) === 0 ? 1 + pick(longestMoved) : 1);
    const to = pick(problem.saws);
    const isAble = block.every((job) => problem.minutes[to]![job]! < Infinity);
    const target = moved[isAble ? to : saw]!;
    target.splice(pick(target.length + 1), 0, ...block);
  }
  return new Day(problem, moved);
}

/** Shakes and descends from the best plan until the work is done or every bound is met. */
function iterate(first: Day, bounds: SawBounds, work: Work): Day {
  const { problem } = first;
  const chance = new Chance(seed);
  const rounds = problem.jobs <= few ? roundsOfFew : Infinity;
  let [best, current] = [first, first];
  const isProven = (): boolean => {
    const [late, end, changes] = best.goals;
    return problem.jobs > few && late <= bounds.late && end <= bounds.end && changes <= bounds.changes;
  };
  for (let round = 1; round <= rounds && !work.isOver && !isProven(); round += 1) {
    const next = shaken(current, chance);
    descendDay(next, work);
    if (!isBetter(current.goals, next.goals)) current = next;
    if (isBetter(next.goals, best.goals)) best = next;
    else if (round % backAfter === 0) current = best;
  }
  return best;
}

/**
 * The best plan of a day that a bounded search finds: least lateness, then earliest finish, then fewest changes of blade;
 * the same at every run and on any machine.
 * @param problem the day
 * @returns the plan [min/1000], and bounds of its goals [min/1000]
 * @source iterated local search: common practice; see sawStarts, descendDay, sawBounds
 */
export function bestDay(problem: SawProblem): BestDay {
  const order = (a: Day, b: Day): number => (isBetter(a.goals, b.goals) ? -1 : isBetter(b.goals, a.goals) ? 1 : 0);
  const days = sawStarts(problem)
    .map((orders) => new Day(problem, orders))
    .filter(({ isPossible }) => isPossible)
    .sort(order);
  const bounds = sawBounds(problem, days[0]!.goals[0]);
  let used = 0;
  const tried = days.slice(0, starts).map((day) => {
    const work = new Work(mostWork * shareOfStart);
    descendDay(day, work);
    used += work.used;
    return day;
  });
  const best = tried.sort(order)[0]!;
  if (problem.jobs < 2) return { day: best, bounds };
  return { day: iterate(best, bounds, new Work(mostWork - used)), bounds };
}
