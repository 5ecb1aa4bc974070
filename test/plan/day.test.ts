import { expect, it } from "vitest";
import { Day, isBetter, type Goals } from "../../src/plan/day";
import { Work } from "../../src/plan/planWork";
import { sawProblem } from "../../src/plan/sawProblem";
import { dayOf } from "./days";

it("goals count in their order, and sums of squares of nearly the same size are the same", () => {
  const goals: Goals = [10, 20, 3, 1e6, 50];
  expect(isBetter([9, 99, 9, 9e9, 99], goals)).toBe(true);
  expect(isBetter([10, 19, 9, 9e9, 99], goals)).toBe(true);
  expect(isBetter([10, 20, 4, 0, 0], goals)).toBe(false);
  expect(isBetter([10, 20, 3, 1e6 + 1e-4, 49], goals)).toBe(true);
  expect(isBetter(goals, goals)).toBe(false);
});

it("takes another order only where it is better, and never one that a saw cannot make (by hand)", () => {
  const jobs = [{ minutes: [30, 30], due: 1 }, { minutes: [10, 10], due: 0.25 }, { minutes: [20, null] }];
  const day = new Day(sawProblem(dayOf(jobs, 2)), [[0, 1, 2], []]);
  const work = new Work(1e6);
  expect(day.goals.slice(0, 3)).toEqual([25_000, 60_000, 0]);
  expect(day.take(work, 0, [0, 1], 1, [2])).toBe(false);
  expect(day.take(work, 0, [2, 0, 1])).toBe(false);
  expect(day.take(work, 0, [1, 0, 2])).toBe(true);
  expect(day.take(work, 0, [1, 2], 1, [0])).toBe(true);
  expect([day.goals.slice(0, 3), day.orders, day.isPossible]).toEqual([[0, 30_000, 0], [[1, 2], [0]], true]);
  expect(work.used).toBeGreaterThan(0);
});
