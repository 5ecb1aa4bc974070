import { expect, it } from "vitest";
import { latenessBound } from "../../src/plan/latenessBound";
import { sawProblem } from "../../src/plan/sawProblem";
import { dayOf, exhaustive, smallDay } from "./days";
import { random } from "./fixture";

const bound = (minutes: readonly number[], due: readonly number[], saws: number, upper: number): number => {
  const problem = sawProblem(
    dayOf(
      minutes.map((m, j) => ({ minutes: [m], due: due[j]! / 60 })),
      saws,
    ),
  );
  return latenessBound(problem, [...problem.shortest.keys()], upper * 1000) / 1000;
};

it("Moore and Hodgson's data on one saw (Pinedo, ch. 3, from memory): 16 late at least, by exhaustive search", () => {
  const found = bound([7, 8, 4, 6, 6], [9, 17, 18, 19, 21], 1, 16);
  expect(found).toBeLessThanOrEqual(16);
  expect(found).toBeGreaterThan(8);
});

it("two equal jobs on one saw: the second is late by one job (by hand)", () => {
  expect(bound([30, 30], [30, 30], 1, 30)).toBeCloseTo(30, 0);
  expect(latenessBound(sawProblem(dayOf([{ minutes: [30] }], 1)), [], 30)).toBe(0);
});

it("is never above the best of every plan", () => {
  const next = random(31);
  for (let run = 0; run < 25; run += 1) {
    const { jobs, saws, change } = smallDay(next);
    const problem = sawProblem(dayOf(jobs, saws, change));
    const wanted = [...problem.due.keys()].filter((job) => problem.due[job]! < Infinity);
    if (wanted.length === 0) continue;
    const best = exhaustive(jobs, saws, change)[0]!;
    expect(latenessBound(problem, wanted, best * 1000) / 1000).toBeLessThanOrEqual(best + 0.01);
  }
});
