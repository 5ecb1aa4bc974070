import { planConstants as k } from "../data/planConstants";
import { InputError } from "../errors";
import { minutesPerHour } from "../quantities";

/** What is to be sawn; minutes and hours from now on, saws free at the start. */
export interface SawPlanInput {
  readonly jobs: readonly string[];
  /** Minutes of each job, one for all saws or one for each; undefined: that saw cannot make it. */
  readonly minutes: readonly (readonly (number | undefined)[])[];
  /** Hours from now at which it is wanted; undefined: never late. Left out: all at `hours`. */
  readonly due: readonly (number | undefined)[] | undefined;
  /** Blade that it needs; undefined: any will do. */
  readonly blade: readonly (string | undefined)[] | undefined;
  /** undefined: as many as the minutes have columns. */
  readonly saws: number | undefined;
  readonly hours: number | undefined;
  /** Minutes of a change of blade. */
  readonly change: number;
}

/** The day in whole thousandths of a minute, so that ties are ties. */
export interface SawProblem {
  readonly jobs: number;
  readonly saws: number;
  /** By saw and job; Infinity: that saw cannot make it. */
  readonly minutes: readonly (readonly number[])[];
  /** By job, the least of all saws. */
  readonly shortest: readonly number[];
  /** Infinity: never late. */
  readonly due: readonly number[];
  /** Place of its blade; −1: any will do. */
  readonly blade: readonly number[];
  readonly blades: number;
  readonly change: number;
}

export const perMinute = 1000;
const perHour = minutesPerHour * perMinute;
const wrong = (problem: string, facts: Readonly<Record<string, string>>): InputError =>
  new InputError("invalid", "minutes", problem, facts);

function sawCount({ minutes, saws }: SawPlanInput): number {
  const columns = minutes[0]!.length;
  const count = saws ?? columns;
  if (count > k.sawSaws.value)
    throw new InputError("invalid", "saws", "a plan takes at most {saws} saws", { saws: String(k.sawSaws.value) });
  if (minutes.length > k.sawJobs.value)
    throw wrong("a plan takes at most {jobs} jobs", { jobs: String(k.sawJobs.value) });
  if (columns > 1 && columns !== count)
    throw wrong("{parameter} has {columns} columns for {saws} saws: one for all, or one for each saw", {
      columns: String(columns),
      saws: String(count),
    });
  return count;
}

/** Blades by their names, case and blanks around them ignored. */
function bladePlaces({ blade, minutes }: SawPlanInput): { readonly blade: readonly number[]; readonly blades: number } {
  const places = new Map<string, number>();
  const blades = minutes.map((_, j) => {
    const name = (blade?.[j] ?? "").trim().toLowerCase();
    if (name === "") return -1;
    places.set(name, places.get(name) ?? places.size);
    return places.get(name)!;
  });
  return { blade: blades, blades: places.size };
}

/**
 * A day of the saws in whole numbers.
 * @param input minutes of the jobs [min], due and hours [h], blades, saws [-], change [min]
 * @returns minutes, due and change [min/1000]; blades by place [-]
 * @throws InputError "invalid": a job that no saw can make, columns of minutes that fit no saws, over 300 jobs or 50 saws
 * @source definition
 */
export function sawProblem(input: SawPlanInput): SawProblem {
  const saws = sawCount(input);
  const minutes = Array.from({ length: saws }, (_, s) =>
    input.minutes.map((row) => {
      const given = row.length === 1 ? row[0] : row[s];
      return given === undefined ? Infinity : Math.max(1, Math.round(given * perMinute));
    }),
  );
  const shortest = input.minutes.map((_, j) => Math.min(...minutes.map((row) => row[j]!)));
  const none = shortest.indexOf(Infinity);
  if (none >= 0) throw wrong("{parameter}, row {row}: no saw can make this job", { row: String(none + 1) });
  const due = input.minutes.map((_, j) => (input.due === undefined ? input.hours : input.due[j]));
  return {
    jobs: input.minutes.length,
    saws,
    minutes,
    shortest,
    due: due.map((hours) => (hours === undefined ? Infinity : Math.round(hours * perHour))),
    ...bladePlaces(input),
    change: Math.round(input.change * perMinute),
  };
}
