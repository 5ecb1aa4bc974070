import { planConstants as k } from "../data/planConstants";
import { Day, isBetter } from "./day";
import { descendDay } from "./descendDay";
import { Chance } from "../statistics/chance";
import { Work } from "./planWork";
import { sawBounds, type SawBounds } from "./sawBounds";
import type { SawProblem } from "./sawProblem";
import { sawStarts } from "./sawStarts";

const fewestMoves = 2;

export interface BestDay {
  readonly day: Day;
  readonly bounds: SawBounds;
}

/** A few jobs or blocks moved at random, each to a saw that can make it. */
function shaken({ problem, orders }: Day, chance: Chance): Day {
  const pick = (count: number): number => Math.floor(chance.next() * count);
  const moved = orders.map((jobs) => [...jobs]);
  for (let move = fewestMoves + pick(k.shakeSpan.value); move > 0; move -= 1) {
    let saw = pick(problem.saws);
    while (moved[saw]!.length === 0) saw = (saw + 1) % problem.saws;
    const at = pick(moved[saw]!.length);
    const block = moved[saw]!.splice(at, pick(k.shakeBlock.value) === 0 ? 1 + pick(k.shakeBlock.value) : 1);
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
  const chance = new Chance(k.chanceSeed.value);
  const rounds = problem.jobs <= k.sawFew.value ? k.fewRounds.value : Infinity;
  let [best, current] = [first, first];
  const isProven = (): boolean => {
    const [late, end, changes] = best.goals;
    return problem.jobs > k.sawFew.value && late <= bounds.late && end <= bounds.end && changes <= bounds.changes;
  };
  for (let round = 1; round <= rounds && !work.isOver && !isProven(); round += 1) {
    const next = shaken(current, chance);
    descendDay(next, work);
    if (!isBetter(current.goals, next.goals)) current = next;
    if (isBetter(next.goals, best.goals)) best = next;
    else if (round % k.backAfter.value === 0) current = best;
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
  const tried = days.slice(0, k.sawStarts.value).map((day) => {
    const work = new Work(k.sawWork.value * k.startShare.value);
    descendDay(day, work);
    used += work.used;
    return day;
  });
  const best = tried.sort(order)[0]!;
  if (problem.jobs < 2) return { day: best, bounds };
  return { day: iterate(best, bounds, new Work(k.sawWork.value - used)), bounds };
}
