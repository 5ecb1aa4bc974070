import { expect, it } from "vitest";
import { sawProblem } from "../../src/plan/sawProblem";
import { sawRun } from "../../src/plan/sawRun";
import { counted, dayOf, largeDay } from "./days";
import { random } from "./fixture";

it("one saw's jobs one after another (by hand): a, b, any, b with 10 minutes a change", () => {
  const jobs = [
    { minutes: [20], due: 0.25, blade: "a" },
    { minutes: [30], due: 1, blade: "b" },
    { minutes: [5] },
    { minutes: [10], due: 1, blade: "b" },
  ];
  const run = sawRun(sawProblem(dayOf(jobs, 1, 10)), 0, [0, 1, 2, 3]);
  // 20 (5 late), change 30, 60, 65, 75 (15 late).
  expect(run).toEqual({ late: 20_000, changes: 1, end: 75_000, flow: 220_000 });
  expect(sawRun(sawProblem(dayOf(jobs, 1, 10)), 0, [])).toEqual({ late: 0, changes: 0, end: 0, flow: 0 });
});

it("agrees with a clock for each saw on random orders", () => {
  const { jobs, change } = largeDay(random(9), 1);
  const problem = sawProblem(dayOf(jobs, 8, change));
  const next = random(10);
  for (let i = 0; i < 200; i += 1) {
    const order = jobs.map((_, j) => j).filter(() => next() < 0.3);
    order.sort(() => next() - 0.5);
    const { late, end, changes } = sawRun(problem, 0, order);
    const [ownLate, ownEnd, ownChanges] = counted(jobs, change, [order]);
    expect(Math.abs(late / 1000 - ownLate)).toBeLessThan(0.1);
    expect([end / 1000, changes]).toEqual([ownEnd, ownChanges]);
  }
});
