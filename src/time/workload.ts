import { InputError } from "../errors";
import { minutesPerHour } from "../quantities";

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

/** Mean wait in the queue [min]: Kingman's form with Sakasegawa's exponent for several saws. */
const wait = (share: number, saws: number, mean: number, variation: number): number =>
  ((1 + variation) / 2) * (share ** (Math.sqrt(2 * (saws + 1)) - 1) / (saws * (1 - share))) * mean;

/**
 * How full the saws are, and how long a job waits: share u = Σ minutes·quantity / (60·hours·saws); wait =
 * (ca² + cs²)/2 · u^(√(2(saws+1)) − 1) / (saws·(1 − u)) · mean minutes, jobs arriving at random (ca² = 1), cs² from the mix
 * of minutes. Exact for one saw and random arrivals (Pollaczek and Khinchine), an approximation otherwise.
 * @param input minutes of one job [min] and jobs in the period, line by line; hours of one saw in the period [h]; saws [-]
 * @returns hoursNeeded [h], share [-], expectedWait [min] or InputError "none" where the saws are overloaded, hoursShort [h]
 * @source Kingman's formula as in Factory Physics (from memory); several saws: Sakasegawa 1977 (from memory); share: P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 26.1
 */
export function workload(input: WorkloadInput): {
  readonly hoursNeeded: number;
  readonly share: number;
  readonly expectedWait: number | InputError;
  readonly hoursShort: number;
} {
  const { hours, saws } = input;
  const { work, mean, variation } = jobMix(input);
  const hoursNeeded = work / minutesPerHour;
  const share = hoursNeeded / (hours * saws);
  const hoursShort = Math.max(0, hoursNeeded - hours * saws);
  return {
    hoursNeeded,
    share,
    expectedWait: share < 1 - 1e-12 ? wait(share, saws, mean, variation) : overloaded(hoursShort),
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
