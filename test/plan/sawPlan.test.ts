import { describe, expect, it } from "vitest";
import { sawPlan } from "../../src/plan/sawPlan";
import { once } from "../../src/once";
import { printText } from "../../functions/kinds/sentence";
import { refused } from "../cost/fixture";
import { dayOf } from "./days";

describe("the table", () => {
  const rows = once(() =>
    sawPlan({
      ...dayOf(
        [
          { minutes: [60], due: 0.5, blade: "3/4" },
          { minutes: [30], due: 2, blade: "2/3" },
          { minutes: [30], blade: "3/4" },
        ],
        1,
        12,
      ),
      jobs: ["shafts", "plates", "rings"],
      hours: 2,
    }),
  );

  it("a row a job, a row a saw, a last one with the sums (by hand)", () => {
    // Least lateness first: the job due at 2 h goes before the one without a due date, at the price of a change.
    expect(rows().map(({ order, saw, job }) => [order, saw, job])).toEqual([
      [1, 1, "shafts"],
      [2, 1, "plates"],
      [3, 1, "rings"],
      [undefined, 1, "all of saw 1"],
      [undefined, undefined, "all"],
    ]);
    expect(rows()[0]).toMatchObject({ start: 0, end: 1, due: 0.5, late: 0.5, blade: "3/4", changes: 0 });
    expect(rows()[1]).toMatchObject({ start: 1.2, end: 1.7, due: 2, late: 0, blade: "2/3", changes: 1, note: "" });
    expect(rows()[2]).toMatchObject({ end: 2.4, due: undefined, late: undefined, changes: 1 });
    expect(rows()[2]!.note).toBe("ends after the hours");
    expect(rows()[3]).toMatchObject({ end: 2.4, late: 0.5, changes: 2, note: "3 jobs" });
  });

  it("the last row says how far each goal is proven", () => {
    expect(rows().at(-1)).toMatchObject({ end: 2.4, late: 0.5, changes: 2 });
    expect(printText(rows().at(-1)!.note, "inch")).toBe(
      "late in all 0.5 h, 1 job: proven least; the last saw ends at 2.4 h: at least 2.2 h by itself; changes of blade 2: at least 1 by itself",
    );
  });
});

it("left out, due is the hours: the hours short become a list of what is late", () => {
  const day = { ...dayOf([{ minutes: [300] }, { minutes: [300] }], 1), due: undefined, hours: 8 };
  const rows = sawPlan(day);
  expect(rows[1]).toMatchObject({ late: 2, note: "ends after the hours" });
  expect(printText(rows.at(-1)!.note, "inch")).toMatch(/^late in all 2 h, 1 job: proven least; /);
});

it("no job is nothing to saw; one is no special case", () => {
  expect(refused(() => sawPlan({ ...dayOf([], 1), saws: 1 }))).toMatchObject({ reason: "none" });
  expect(sawPlan(dayOf([{ minutes: [6] }], 3)).at(-1)).toMatchObject({ end: 0.1, late: 0, changes: 0 });
});

it("the last row whole: nothing late, one job late, several", () => {
  const note = (...args: Parameters<typeof dayOf>) => printText(sawPlan(dayOf(...args)).at(-1)!.note, "inch");
  expect(note([{ minutes: [60], due: 2 }], 1)).toBe(
    "nothing is late; the last saw ends at 1 h: proven least; changes of blade 0: proven least",
  );
  expect(
    note(
      [
        { minutes: [60], due: 0.5 },
        { minutes: [60], due: 0.5 },
      ],
      1,
    ),
  ).toBe(
    "late in all 2 h, 2 jobs: proven least; the last saw ends at 2 h: proven least; changes of blade 0: proven least",
  );
  expect(refused(() => sawPlan(dayOf([], 1)))).toEqual({
    reason: "none",
    parameter: "",
    problem: "there is nothing to saw",
  });
  const rows = sawPlan(dayOf([{ minutes: [60], due: 2 }], 2));
  expect(rows.map(({ job, note: n }) => [job, n]).slice(1, 3)).toEqual([
    ["all of saw 1", "1 job"],
    ["all of saw 2", "0 jobs"],
  ]);
});
