import { cuttingConstants } from "../data/cuttingConstants";
import { timeConstants as k } from "../data/timeConstants";
import { InputError } from "../errors";
import { minutesPerHour } from "../quantities";
import { longRunWait, type Queue } from "./longRunWait";
import { waitFromEmpty } from "./waitFromEmpty";

interface WorkloadInput {
  /** Minutes of one job [min], one for each line. */
  readonly minutes: readonly number[];
  /** Jobs of each line in the period [-]. */
  readonly quantities: readonly number[];
  /** Hours that one saw runs in the period [h]. */
  readonly hours: number;
  readonly saws: number;
}

/** Mean of the job's minutes and their squared coefficient of variation, weighted by the quantities. */
function jobMix({ minutes, quantities }: WorkloadInput): {
  readonly work: number;
  readonly mean: number;
  readonly variation: number;
} {
  const sum = (of: (m: number) => number): number => minutes.reduce((s, m, i) => s + of(m) * quantities[i]!, 0);
  const jobs = sum(() => 1);
  const mean = sum((m) => m) / jobs;
  return { work: mean * jobs, mean, variation: sum((m) => (m / mean - 1) ** 2) / jobs };
}

const none = (problem: string, facts: InputError["facts"] = {}): InputError =>
  new InputError("none", "", problem, facts);
const percent = (share: number): string => String(Number((share * 100).toPrecision(cuttingConstants.saidDigits.value)));

function longRun(queue: Queue, hoursShort: number): number | InputError {
  const { share } = queue;
  if (share >= 1 - 1e-12) return overloaded(hoursShort);
  if (share <= k.settledTo.value + 1e-12) return longRunWait(queue);
  return none(
    "at {share} % of the saws' time the long run takes far longer than a period to come: see wait from empty",
    {
      share: percent(share),
    },
  );
}

/** The wait of the first hours where it was simulated; else why there is none. */
function fromEmpty(queue: Queue, { minutes, hours }: WorkloadInput): number | InputError {
  const { share, saws, variation } = queue;
  if (share < k.fromEmptyFrom.value - 1e-12)
    return none("at {share} % of the saws' time the first hours are soon like the long run: see expected wait", {
      share: percent(share),
    });
  if (saws > k.mostSaws.value)
    return none("the first hours are known for up to {saws} saws", { saws: String(k.mostSaws.value) });
  if (Math.max(...minutes) > k.longestJob.value * hours * minutesPerHour)
    return none("the first hours are not known where one job takes over half of them");
  if (variation > (saws <= k.fewSaws.value ? k.mostVariation : k.usualVariation).value)
    return none("the first hours are not known for minutes that differ so much between jobs");
  return waitFromEmpty(queue, hours);
}

/**
 * How full the saws are, and how long a job waits, jobs arriving at random: share u = Σ minutes·quantity / (60·hours·saws);
 * the wait in the long run up to 95 % (longRunWait), and from 80 % up the mean of the first hours from empty saws
 * (waitFromEmpty), cs² from the mix of minutes.
 * @param input minutes of one job [min] and jobs in the period, line by line; hours of one saw in the period [h]; saws [-]
 * @returns hoursNeeded [h], share [-], expectedWait and waitFromEmpty [min], each an InputError "none" with the reason where there is none, hoursShort [h]
 * @source see longRunWait, waitFromEmpty; share: P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 26.1
 */
export function workload(input: WorkloadInput): {
  readonly hoursNeeded: number;
  readonly share: number;
  readonly expectedWait: number | InputError;
  readonly waitFromEmpty: number | InputError;
  readonly hoursShort: number;
} {
  const { hours, saws } = input;
  const { work, mean, variation } = jobMix(input);
  const hoursNeeded = work / minutesPerHour;
  const share = hoursNeeded / (hours * saws);
  const hoursShort = Math.max(0, hoursNeeded - hours * saws);
  const queue = { share, saws, mean, variation };
  return {
    hoursNeeded,
    share,
    expectedWait: longRun(queue, hoursShort),
    waitFromEmpty: fromEmpty(queue, input),
    hoursShort,
  };
}

function overloaded(hoursShort: number): InputError {
  if (hoursShort < 1e-9)
    return new InputError("none", "", "the saws are full all the time: the wait grows without end");
  return new InputError("none", "", "overloaded by {hours} in the period: the wait grows without end", {
    hours: { number: hoursShort, quantity: "hours" },
  });
}
