import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { bestDay } from "../../src/plan/bestDay";
import { sawProblem } from "../../src/plan/sawProblem";
import { counted, dayOf, exhaustive, largeDay, minutesOf, smallDay, type TestJob } from "./days";
import { random } from "./fixture";

interface Check {
  readonly id: string;
  readonly jobs: readonly TestJob[];
  readonly saws: number;
  readonly change: number;
  readonly expected: {
    readonly lateMinutes?: number;
    readonly changes?: number;
    readonly endMinutes?: number;
    readonly sumOfFinishes?: number;
    readonly refused?: string;
    readonly sentence?: string;
  };
  readonly source: string;
}
const checks = JSON.parse(readFileSync("test/data/plan/days.json", "utf8")) as readonly Check[];
const planned = (jobs: readonly TestJob[], saws: number, change: number) => {
  const { day, bounds } = bestDay(sawProblem(dayOf(jobs, saws, change)));
  const [late, end, changes, , flow] = day.goals;
  // Counted again apart, every job once.
  const again = counted(jobs, change, day.orders);
  expect(again[0]).toBeCloseTo(minutesOf(late), 1);
  expect(again[1]).toBeCloseTo(minutesOf(end), 1);
  expect(again[2]).toBe(changes);
  expect(day.orders.flat().sort((a, b) => a - b)).toEqual(jobs.map((_, j) => j));
  return { day, bounds, late: minutesOf(late), end: minutesOf(end), changes, flow: minutesOf(flow) };
};

describe("published and hand-made days", () => {
  it.each(checks)("$id ($source)", ({ jobs, saws, change, expected }) => {
    if (expected.refused !== undefined) {
      expect(() => planned(jobs, saws, change)).toThrow(expect.objectContaining({ reason: "invalid" }) as InputError);
      return;
    }
    const { late, end, changes, flow } = planned(jobs, saws, change);
    if (expected.lateMinutes !== undefined) expect(late).toBeCloseTo(expected.lateMinutes, 2);
    if (expected.endMinutes !== undefined) expect(end).toBeCloseTo(expected.endMinutes, 2);
    if (expected.changes !== undefined) expect(changes).toBe(expected.changes);
    if (expected.sumOfFinishes !== undefined) expect(flow).toBeCloseTo(expected.sumOfFinishes, 2);
  });
});

/** SMALL_DAYS=1000 and LARGE_DAYS=200 are the long runs. */
const small = Number(process.env["SMALL_DAYS"] ?? 60);
it(`${small} small days: as good as the best of every plan in lateness, finish and changes, on 99 of 100; no bound above`, () => {
  const next = random(77);
  let optimal = 0;
  for (let run = 0; run < small; run += 1) {
    const { jobs, saws, change } = smallDay(next);
    const { late, end, changes, bounds } = planned(jobs, saws, change);
    const [bestLate, bestEnd, bestChanges] = exhaustive(jobs, saws, change) as [number, number, number];
    expect(late).toBeGreaterThanOrEqual(bestLate - 0.01);
    expect(minutesOf(bounds.late)).toBeLessThanOrEqual(bestLate + 0.01);
    expect(minutesOf(bounds.end)).toBeLessThanOrEqual(bestEnd + 0.01);
    expect(bounds.changes).toBeLessThanOrEqual(bestChanges);
    if (late < bestLate + 0.01 && end < bestEnd + 0.01 && changes <= bestChanges) optimal += 1;
  }
  if (process.env["SMALL_DAYS"] !== undefined) console.log(`optimal: ${optimal} of ${small}`);
  expect(optimal / small).toBeGreaterThanOrEqual(0.99);
});

const large = Number(process.env["LARGE_DAYS"] ?? 4);
it(`${large} days of 60 jobs on 8 saws at loads up to 1: lateness proven least on 95 of 100`, () => {
  const next = random(60);
  let [proven, longest] = [0, 0];
  const lines: string[] = [];
  for (let run = 0; run < large; run += 1) {
    const load = [0.7, 0.85, 0.95, 1][run % 4]!;
    const { jobs, saws, change } = largeDay(next, load);
    const before = process.cpuUsage();
    const { day, bounds, late, changes, end } = planned(jobs, saws, change);
    const taken = process.cpuUsage(before).user / 1000;
    longest = Math.max(longest, taken);
    expect(bounds.late).toBeLessThanOrEqual(day.goals[0]);
    if (day.goals[0] <= bounds.late) proven += 1;
    lines.push(
      `${load}: late ${late.toFixed(1)} of ${minutesOf(bounds.late).toFixed(1)}, end ${(end / minutesOf(bounds.end)).toFixed(3)}, changes ${changes}, ${taken.toFixed(0)} ms of processor`,
    );
  }
  if (process.env["LARGE_DAYS"] !== undefined)
    console.log(lines.join("\n"), `\nproven ${proven} of ${large}, longest ${longest.toFixed(0)} ms`);
  expect(proven / large).toBeGreaterThanOrEqual(0.95);
});

it("the same plan at every run", () => {
  const { jobs, saws, change } = largeDay(random(3), 1);
  const of = () => bestDay(sawProblem(dayOf(jobs, saws, change))).day.orders;
  expect(of()).toEqual(of());
});

it.each<{ jobs: readonly TestJob[]; change: number }>([
  // Small days (invented) whose first plans can only be bettered by shaking them.
  {
    jobs: [
      { minutes: [27], due: 67 / 60, blade: "b2" },
      { minutes: [35], due: 2, blade: "b0" },
      { minutes: [43], due: 16 / 60, blade: "b2" },
      { minutes: [7], due: 153 / 60, blade: "b2" },
      { minutes: [46], blade: "b0" },
      { minutes: [35], blade: "b2" },
      { minutes: [23], due: 181 / 60, blade: "b1" },
    ],
    change: 7,
  },
  {
    jobs: [
      { minutes: [23, 19], due: 176 / 60, blade: "b0" },
      { minutes: [22, 27], blade: "b0" },
      { minutes: [48, 61], due: 175 / 60 },
      { minutes: [44, 51], due: 74 / 60, blade: "b1" },
      { minutes: [null, 16], due: 214 / 60, blade: "b0" },
      { minutes: [19, 15], blade: "b0" },
      { minutes: [53, 72], due: 214 / 60, blade: "b0" },
    ],
    change: 25,
  },
])("as good as every plan of a day that the first descents do not solve, $change min a change", ({ jobs, change }) => {
  const { late, end, changes } = planned(jobs, 2, change);
  const [bestLate, bestEnd, bestChanges] = exhaustive(jobs, 2, change) as [number, number, number];
  expect(late).toBeCloseTo(bestLate, 1);
  expect(end).toBeCloseTo(bestEnd, 1);
  expect(changes).toBe(bestChanges);
});
