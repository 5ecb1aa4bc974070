import { expect, it } from "vitest";
import { sawBounds } from "../../src/plan/sawBounds";
import { sawProblem } from "../../src/plan/sawProblem";
import { dayOf, exhaustive, smallDay, type TestJob } from "./days";
import { random } from "./fixture";

const of = (jobs: readonly TestJob[], saws: number, change = 0, upper = 1e9) =>
  sawBounds(sawProblem(dayOf(jobs, saws, change)), upper);

it("finish: all work over all saws, the longest job, two that share a saw, and the changes needed (by hand)", () => {
  const plain = (...minutes: readonly number[]): TestJob[] => minutes.map((m) => ({ minutes: [m] }));
  expect(of(plain(10, 10, 10, 10), 2).end).toBe(20_000);
  expect(of(plain(90, 10, 10), 2).end).toBe(90_000);
  expect(of(plain(50, 40, 40), 2).end).toBe(80_000);
  const blades = ["a", "b", "c"].map((blade) => ({ minutes: [10], blade }));
  expect(of(blades, 1, 6)).toMatchObject({ end: 42_000, changes: 2 });
});

it("lateness: each job alone, and the first jobs by due date (by hand)", () => {
  expect(of([{ minutes: [60], due: 0.5 }], 3).late).toBe(30_000);
  // Three of 20 minutes due at 20 on one saw: 0 + 20 + 40.
  const three = Array.from({ length: 3 }, () => ({ minutes: [20], due: 1 / 3 }));
  expect(of(three, 1, 0, 60_000).late).toBe(60_000);
  expect(of([{ minutes: [60] }], 1).late).toBe(0);
});

it("none is ever above the best of every plan", () => {
  const next = random(41);
  for (let run = 0; run < 25; run += 1) {
    const { jobs, saws, change } = smallDay(next);
    const [late, end, changes] = exhaustive(jobs, saws, change) as [number, number, number];
    const bounds = of(jobs, saws, change, late * 1000);
    expect(bounds.late / 1000).toBeLessThanOrEqual(late + 0.01);
    expect(bounds.end / 1000).toBeLessThanOrEqual(end + 0.01);
    expect(bounds.changes).toBeLessThanOrEqual(changes);
  }
});

it("the first jobs by due date, all of them, without the help of prices (by hand)", () => {
  // Finishes at 20, 40 and 60, each due at 20: 0 + 20 + 40; no plan of lateness 0 is known, so prices are not asked.
  const three = Array.from({ length: 3 }, () => ({ minutes: [20], due: 1 / 3 }));
  expect(of(three, 1, 0, 0).late).toBe(60_000);
  // The second of two is due late: only the first alone is late.
  expect(
    of(
      [
        { minutes: [60], due: 0.5 },
        { minutes: [60], due: 9 },
      ],
      1,
      0,
      0,
    ).late,
  ).toBe(30_000);
});
it("prices prove more than sorted finishes do (by hand)", () => {
  // 10 due 10, 10 due 30, 50 due 20: sorted finishes 10, 20, 70 against 10, 20, 30 say 40; the best plan is 50 late.
  const jobs = [
    { minutes: [10], due: 1 / 6 },
    { minutes: [10], due: 1 / 2 },
    { minutes: [50], due: 1 / 3 },
  ];
  expect(of(jobs, 1, 0, 0).late).toBe(40_000);
  const { late } = of(jobs, 1, 0, 50_000);
  expect(late).toBeGreaterThan(40_000);
  expect(late).toBeLessThanOrEqual(50_010);
});
