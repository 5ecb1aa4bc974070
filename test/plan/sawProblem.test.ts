import { describe, expect, it } from "vitest";
import { sawProblem } from "../../src/plan/sawProblem";
import { refused } from "../cost/fixture";
import { dayOf } from "./days";

describe("a day in whole numbers", () => {
  it("thousandths of a minute, blades by place, no due date as never late (by hand)", () => {
    const problem = sawProblem(
      dayOf(
        [
          { minutes: [10], due: 1, blade: "3/4" },
          { minutes: [20.5], blade: " 2/3" },
          { minutes: [1 / 3], due: 0.5, blade: "3/4 " },
        ],
        2,
        12,
      ),
    );
    expect(problem).toMatchObject({
      jobs: 3,
      saws: 2,
      minutes: [
        [10_000, 20_500, 333],
        [10_000, 20_500, 333],
      ],
      due: [60_000, Infinity, 30_000],
      blade: [0, 1, 0],
      blades: 2,
      change: 12_000,
    });
  });

  it("a column for each saw says how many saws there are; a blank cannot be made there", () => {
    const { saws, minutes, shortest } = sawProblem({ ...dayOf([{ minutes: [60, null, 40] }], 3), saws: undefined });
    expect([saws, minutes, shortest]).toEqual([3, [[60_000], [Infinity], [40_000]], [40_000]]);
  });

  it("left out, every job is due at the hours", () => {
    const day = { ...dayOf([{ minutes: [30] }], 1), due: undefined };
    expect(sawProblem({ ...day, hours: 8 }).due).toEqual([480_000]);
    expect(sawProblem(day).due).toEqual([Infinity]);
  });

  it("refuses what cannot be planned, with the row", () => {
    const problem = (...args: Parameters<typeof dayOf>) => refused(() => sawProblem(dayOf(...args))).problem;
    expect(problem([{ minutes: [5, 5] }, { minutes: [null, null] }], 2)).toBe(
      "{parameter}, row {row}: no saw can make this job",
    );
    expect(problem([{ minutes: [5, 5, 5] }], 2)).toMatch(/has \{columns\} columns for \{saws\} saws/);
    expect(problem(new Array(301).fill({ minutes: [5] }), 2)).toMatch(/at most \{jobs\} jobs/);
    expect(problem([{ minutes: [5] }], 51)).toMatch(/at most \{saws\} saws/);
  });
});

it("50 saws and 300 jobs are the most; refusals by their argument", () => {
  const problem = (...args: Parameters<typeof dayOf>) => refused(() => sawProblem(dayOf(...args)));
  const jobs = (count: number) => Array.from({ length: count }, () => ({ minutes: [5] }));
  expect(problem(jobs(1), 51)).toEqual({
    reason: "invalid",
    parameter: "saws",
    problem: "a plan takes at most {saws} saws",
  });
  expect(problem(jobs(301), 2)).toEqual({
    reason: "invalid",
    parameter: "minutes",
    problem: "a plan takes at most {jobs} jobs",
  });
  expect(problem([{ minutes: [5, 5, 5] }], 2)).toEqual({
    reason: "invalid",
    parameter: "minutes",
    problem: "{parameter} has {columns} columns for {saws} saws: one for all, or one for each saw",
  });
  expect(sawProblem(dayOf(jobs(300), 50))).toMatchObject({ jobs: 300, saws: 50 });
  // A job takes a thousandth of a minute at least; names of blades are one in any case.
  expect(
    sawProblem(
      dayOf(
        [
          { minutes: [0.0001], blade: "A" },
          { minutes: [1], blade: "a" },
        ],
        1,
      ),
    ),
  ).toMatchObject({
    shortest: [1, 1000],
    blades: 1,
  });
});
