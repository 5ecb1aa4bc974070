import { expect, it } from "vitest";
import { Day } from "../../src/plan/day";
import { sawProblem } from "../../src/plan/sawProblem";
import { sawStarts } from "../../src/plan/sawStarts";
import { dayOf, largeDay } from "./days";
import { random } from "./fixture";

const ends = (minutes: readonly number[], saws: number): readonly number[] => {
  const problem = sawProblem(
    dayOf(
      minutes.map((m) => ({ minutes: [m] })),
      saws,
    ),
  );
  return sawStarts(problem).map((orders) => new Day(problem, orders).goals[1] / 1000);
};

it("longest first is Graham's worst case: 7 where 6 is possible, 11 where 9 is (Graham 1969, from memory)", () => {
  expect(ends([3, 3, 2, 2, 2], 2)[2]).toBe(7);
  expect(ends([5, 5, 4, 4, 3, 3, 3], 3)[2]).toBe(11);
});

it("the list in its own order ends at 5 where 3 is possible (Graham 1966, m = 3, from memory)", () => {
  expect(ends([1, 1, 1, 1, 1, 1, 3], 3)[1]).toBe(5);
});

it("every start gives each job to one saw that can make it, or is left out", () => {
  const { jobs, change } = largeDay(random(4), 1);
  const own = jobs.map((job, j) => ({ ...job, minutes: [job.minutes[0], j % 3 === 0 ? null : job.minutes[0]] }));
  const problem = sawProblem(dayOf(own, 2, change));
  const all = sawStarts(problem);
  expect(all.length).toBeGreaterThan(10);
  for (const orders of all) {
    expect(orders.flat().sort((a, b) => a - b)).toEqual(jobs.map((_, j) => j));
    expect(new Day(problem, orders).isPossible).toBe(true);
  }
});
