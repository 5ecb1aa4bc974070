import { expect, it } from "vitest";
import { Day, isBetter } from "../../src/plan/day";
import { descendDay } from "../../src/plan/descendDay";
import { Work } from "../../src/plan/planWork";
import { sawProblem } from "../../src/plan/sawProblem";
import { dayOf, largeDay } from "./days";
import { random } from "./fixture";

it("ends where no move is better, keeps every job once, and never becomes worse", () => {
  const { jobs, saws, change } = largeDay(random(21), 1);
  const problem = sawProblem(dayOf(jobs.slice(0, 20), saws, change));
  const first = new Day(problem, [[...problem.shortest.keys()], ...Array.from({ length: saws - 1 }, () => [])]);
  const day = new Day(problem, first.orders);
  descendDay(day, new Work(1e8));
  expect(isBetter(day.goals, first.goals)).toBe(true);
  expect(day.orders.flat().sort((a, b) => a - b)).toEqual([...problem.shortest.keys()]);
  const again = new Day(problem, day.orders);
  descendDay(again, new Work(1e8));
  expect(again.goals).toEqual(day.goals);
});

it("stops when its work is done", () => {
  const { jobs, saws, change } = largeDay(random(22), 1);
  const problem = sawProblem(dayOf(jobs, saws, change));
  const work = new Work(1000);
  descendDay(new Day(problem, [[...problem.shortest.keys()], ...Array.from({ length: saws - 1 }, () => [])]), work);
  expect(work.used).toBeLessThan(1000 + 60 * 60 * 8 * 70);
});

it("moves a job that can wait behind the one that is due (by hand)", () => {
  // 36 due at 49, 8 without a date, 38 due at 60: at the end 36 + 38 − 60 = 14 late, and 82 in all.
  const jobs = [{ minutes: [36], due: 49 / 60, blade: "b0" }, { minutes: [8] }, { minutes: [38], due: 1, blade: "b0" }];
  const day = new Day(sawProblem(dayOf(jobs, 1, 4)), [[0, 1, 2]]);
  descendDay(day, new Work(1e7));
  expect(day.orders).toEqual([[0, 2, 1]]);
  expect(day.goals.slice(0, 3)).toEqual([14_000, 82_000, 0]);
});
