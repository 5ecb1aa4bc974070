import { InputError, type Measured } from "../errors";
import { cuttingConstants } from "../data/cuttingConstants";
import { minutesPerHour } from "../quantities";
import type { Text } from "../phrase";
import { bestDay, type BestDay } from "./bestDay";
import { perMinute, sawProblem, type SawPlanInput, type SawProblem } from "./sawProblem";
import { sawRun } from "./sawRun";

/** A job of the plan; then a row a saw; the last row is about all. */
export interface SawPlanRow {
  readonly order: number | undefined;
  readonly saw: number | undefined;
  readonly job: string;
  readonly start: number | undefined;
  readonly end: number;
  readonly due: number | undefined;
  readonly late: number | undefined;
  readonly blade: string;
  readonly changes: number;
  readonly note: Text;
}

const perHour = minutesPerHour * perMinute;
const said = (time: number): Measured => ({
  number: time / perHour,
  quantity: "hours",
  digits: cuttingConstants.saidDigits.value,
});

function jobRows(input: SawPlanInput, problem: SawProblem, saw: number, jobs: readonly number[]): SawPlanRow[] {
  return jobs.map((job, i) => {
    const { end, changes } = sawRun(problem, saw, jobs.slice(0, i + 1));
    const before = sawRun(problem, saw, jobs.slice(0, i));
    const due = problem.due[job]!;
    return {
      order: i + 1,
      saw: saw + 1,
      job: input.jobs[job]!,
      start: (end - problem.minutes[saw]![job]!) / perHour,
      end: end / perHour,
      due: due === Infinity ? undefined : due / perHour,
      late: due === Infinity ? undefined : Math.max(0, end - due) / perHour,
      blade: input.blade?.[job] ?? "",
      changes: changes - before.changes,
      note: input.hours !== undefined && end > Math.round(input.hours * perHour) ? "ends after the hours" : "",
    };
  });
}

function sawRow(problem: SawProblem, saw: number, jobs: readonly number[]): SawPlanRow {
  const { late, changes, end } = sawRun(problem, saw, jobs);
  return {
    order: undefined,
    saw: saw + 1,
    job: `all of saw ${saw + 1}`,
    start: undefined,
    end: end / perHour,
    due: undefined,
    late: late / perHour,
    blade: "",
    changes,
    note: `${jobs.length} ${jobs.length === 1 ? "job" : "jobs"}`,
  };
}

/** A goal beside what no plan goes below, that goal taken by itself. */
const against = (isLeast: boolean, least: string): string => (isLeast ? "proven least" : `at least ${least} by itself`);

function proof({ day, bounds }: BestDay, lateJobs: number): Text {
  const [late, end, changes] = day.goals;
  const jobs = lateJobs === 1 ? "1 job" : `${lateJobs} jobs`;
  const lateness =
    late === 0 ? "nothing is late" : `late in all {late}, ${jobs}: ${against(late <= bounds.late, "{lateBound}")}`;
  const finish = `the last saw ends at {end}: ${against(end <= bounds.end, "{endBound}")}`;
  const blades = `changes of blade ${changes}: ${against(changes <= bounds.changes, String(bounds.changes))}`;
  return {
    template: `${lateness}; ${finish}; ${blades}`,
    facts: { late: said(late), lateBound: said(bounds.late), end: said(end), endBound: said(bounds.end) },
  };
}

/**
 * Which job on which saw in which order: least total lateness, then the earliest finish of the last saw, then fewest changes
 * of blade. All saws are free at the start and run on; the first blade on a saw is no change.
 * @param input jobs [text]; minutes of each [min]; due and hours from now [h]; blades [text]; saws [-]; change [min]
 * @returns a row a job by saw and order, a row a saw, and a last one with the sums and how far they are proven: order, saw, changes [-]; start, end, due, late [h]; job, blade, note [text]
 * @throws InputError as sawProblem; "none": nothing to saw
 * @source see bestDay, sawBounds
 */
export function sawPlan(input: SawPlanInput): readonly SawPlanRow[] {
  if (input.minutes.length === 0) throw new InputError("none", "", "there is nothing to saw");
  const problem = sawProblem(input);
  const best = bestDay(problem);
  const { orders, goals } = best.day;
  const rows = orders.flatMap((jobs, saw) => jobRows(input, problem, saw, jobs));
  const lateJobs = rows.filter(({ late }) => (late ?? 0) > 0).length;
  const last: SawPlanRow = {
    order: undefined,
    saw: undefined,
    job: "all",
    start: undefined,
    end: goals[1] / perHour,
    due: undefined,
    late: goals[0] / perHour,
    blade: "",
    changes: goals[2],
    note: proof(best, lateJobs),
  };
  return [...rows, ...orders.map((jobs, saw) => sawRow(problem, saw, jobs)), last];
}
