import { planConstants as k } from "../data/planConstants";
import type { Day } from "./day";
import type { Work } from "./planWork";

const without = (jobs: readonly number[], at: number, count: number): readonly number[] => [
  ...jobs.slice(0, at),
  ...jobs.slice(at + count),
];
const put = (jobs: readonly number[], at: number, block: readonly number[]): readonly number[] => [
  ...jobs.slice(0, at),
  ...block,
  ...jobs.slice(at),
];

/** A block of neighbours to any place on any saw. */
function moveBlock(day: Day, work: Work, saw: number, at: number, block: readonly number[]): boolean {
  const rest = without(day.orders[saw]!, at, block.length);
  for (let to = 0; to < day.orders.length; to += 1) {
    const target = to === saw ? rest : day.orders[to]!;
    for (let place = 0; place <= target.length; place += 1) {
      const grown = put(target, place, block);
      if (to !== saw ? day.take(work, saw, rest, to, grown) : place !== at && day.take(work, saw, grown)) return true;
    }
  }
  return false;
}

/** Blocks that begin at a job: itself, and its neighbours as long as they need the same blade. */
function moveBlocks(day: Day, work: Work, saw: number, at: number): boolean {
  const jobs = day.orders[saw]!;
  const { blade } = day.problem;
  for (let length = 1; length <= k.moveBlock.value && at + length <= jobs.length; length += 1) {
    const last = blade[jobs[at + length - 1]!]!;
    if (length > 1 && last >= 0 && last !== blade[jobs[at]!]) return false;
    if (moveBlock(day, work, saw, at, jobs.slice(at, at + length))) return true;
  }
  return false;
}

/** Two jobs change places. */
function swap(day: Day, work: Work, saw: number, at: number): boolean {
  for (let to = saw; to < day.orders.length; to += 1)
    for (let place = to === saw ? at + 1 : 0; place < day.orders[to]!.length; place += 1) {
      const own = [...day.orders[saw]!];
      const other = to === saw ? own : [...day.orders[to]!];
      [own[at], other[place]] = [other[place]!, own[at]!];
      if (to === saw ? day.take(work, saw, own) : day.take(work, saw, own, to, other)) return true;
    }
  return false;
}

/** Two saws change what they do from some job on. */
function swapTails(day: Day, work: Work, saw: number, at: number): boolean {
  const own = day.orders[saw]!;
  for (let to = 0; to < day.orders.length; to += 1) {
    if (to === saw) continue;
    const other = day.orders[to]!;
    for (let place = 0; place <= other.length; place += 1) {
      const [first, second] = [
        [...own.slice(0, at), ...other.slice(place)],
        [...other.slice(0, place), ...own.slice(at)],
      ];
      if (day.take(work, saw, first, to, second)) return true;
    }
  }
  return false;
}

/**
 * Takes the first change of a plan that is better, until none is: blocks of one blade moved, jobs swapped, tails exchanged.
 * @param day the plan, changed in place
 * @param work its limit
 * @returns nothing [-]
 * @source local search by insertion and exchange: common practice
 */
export function descendDay(day: Day, work: Work): void {
  for (let isImproved = true; isImproved && !work.isOver;) {
    isImproved = false;
    for (let saw = 0; saw < day.orders.length; saw += 1)
      for (let at = 0; at < day.orders[saw]!.length && !work.isOver;)
        if (moveBlocks(day, work, saw, at) || swap(day, work, saw, at) || swapTails(day, work, saw, at))
          isImproved = true;
        else at += 1;
  }
}
