import { costConstants } from "../data/costConstants";
import { InputError } from "../errors";
import { minutesPerHour } from "../quantities";

/** What one job takes with one class of blade. */
export interface MixWay {
  /** Area of all its cuts. */
  readonly area: number;
  /** Saw minutes without changes of blade, and minutes that each blade adds. */
  readonly run: number;
  readonly bladeMinutes: number;
  readonly price: number;
  readonly life: number;
}

/** A job with the classes that can make it. */
export interface MixJob<W extends MixWay = MixWay> {
  readonly biMetal: W | undefined;
  readonly carbide: W | undefined;
}

export interface Spent {
  readonly minutes: number;
  readonly blades: number;
  readonly cost: number;
}

export interface WeighedJob {
  readonly biMetal: Spent | undefined;
  readonly carbide: Spent | undefined;
  /** The class to cut it with; with equal costs the one in use, bi-metal. */
  readonly takes: "biMetal" | "carbide" | undefined;
  readonly isEqual: boolean;
}

export interface WeighedMix {
  readonly jobs: readonly WeighedJob[];
  /** All jobs with one class where it can; each with its cheaper one. */
  readonly biMetal: Spent;
  readonly carbide: Spent;
  readonly best: Spent;
  /** Jobs that both can make. */
  readonly both: number;
  readonly highestPrice: number | InputError;
  /** Shortest lives as a share of those given, and as one area. */
  readonly lifeShare: number | InputError;
  readonly shortestLife: number | InputError;
}

const { tie, roundOff } = costConstants;
const none = (problem: string): InputError => new InputError("none", "", problem);
const nothing: Spent = { minutes: 0, blades: 0, cost: 0 };
const sum = <T>(list: readonly T[], of: (each: T) => number): number => list.reduce((s, each) => s + of(each), 0);

function spend(way: MixWay | undefined, hourValue: number): Spent | undefined {
  if (way === undefined) return undefined;
  const blades = way.area / way.life;
  const minutes = way.run + way.bladeMinutes * blades;
  return { minutes, blades, cost: (hourValue * minutes) / minutesPerHour + way.price * blades };
}

function weigh(job: MixJob, hourValue: number): WeighedJob {
  const [biMetal, carbide] = [spend(job.biMetal, hourValue), spend(job.carbide, hourValue)];
  if (biMetal === undefined || carbide === undefined)
    return {
      biMetal,
      carbide,
      takes: biMetal !== undefined ? "biMetal" : carbide !== undefined ? "carbide" : undefined,
      isEqual: false,
    };
  const isEqual = Math.abs(biMetal.cost - carbide.cost) <= tie.value * biMetal.cost;
  return { biMetal, carbide, takes: !isEqual && carbide.cost < biMetal.cost ? "carbide" : "biMetal", isEqual };
}

/** All jobs, each spent as `of` says; blades are only those of the class asked for. */
const total = (jobs: readonly WeighedJob[], of: (job: WeighedJob) => Spent | undefined): Spent => ({
  minutes: sum(jobs, (job) => of(job)?.minutes ?? 0),
  blades: sum(jobs, (job) => of(job)?.blades ?? 0),
  cost: sum(jobs, (job) => of(job)?.cost ?? 0),
});
const allWith = (jobs: readonly WeighedJob[], own: "biMetal" | "carbide", other: "biMetal" | "carbide"): Spent => ({
  ...total(jobs, (job) => job[own] ?? job[other]),
  blades: sum(jobs, (job) => job[own]?.blades ?? 0),
});

type Both = readonly { readonly way: MixWay; readonly biMetal: Spent; readonly carbide: Spent }[];

/** Carbide price and lives at which both classes cost the same over the jobs that both can make. */
function limits(both: Both, hourValue: number): Pick<WeighedMix, "highestPrice" | "lifeShare" | "shortestLife"> {
  const never = none("no job can be cut with both classes");
  if (both.length === 0) return { highestPrice: never, lifeShare: never, shortestLife: never };
  const perMinute = hourValue / minutesPerHour;
  const biMetal = sum(both, (job) => job.biMetal.cost);
  const blades = sum(both, (job) => job.carbide.blades);
  const isLeft = (left: number): boolean => left > roundOff.value * biMetal;
  const forBlades = biMetal - perMinute * sum(both, (job) => job.carbide.minutes);
  const left = biMetal - perMinute * sum(both, ({ way }) => way.run);
  const spent = sum(both, ({ way, carbide }) => (way.price + perMinute * way.bladeMinutes) * carbide.blades);
  const share = isLeft(left) ? spent / left : none("never: no life is long enough");
  return {
    highestPrice: isLeft(forBlades) ? forBlades / blades : none("never: carbide loses over the mix even as a gift"),
    lifeShare: share,
    shortestLife: share instanceof InputError ? share : (share * sum(both, ({ way }) => way.area)) / blades,
  };
}

/**
 * Bi-metal against carbide over an order book: blades n = area/life, minutes M = run + blade minutes·n, cost C =
 * w·M/60 + price·n. Over the jobs that both can make: highest carbide price = (ΣC_b − w·ΣM_c/60)/Σn_c; shortest lives as a
 * share f of those given, all by one factor: f = Σ(price + w·blade minutes/60)·n_c / (ΣC_b − w·Σrun_c/60), as one area
 * f·Σarea/Σn_c. A job that one class cannot make is counted with the other in both sums.
 * @param jobs area and life [area], run and blade minutes [min], price [money] with each class
 * @param hourValue w [money/h]
 * @returns minutes [min], blades [-], cost [money] job by job, over all, and with the cheaper class; highestPrice [money], lifeShare [-], shortestLife [area], each an InputError "none" with the reason where no answer exists
 * @source cost per area as in bladeCost, summed over the jobs; solved by hand
 */
export function weighMix(jobs: readonly MixJob[], hourValue: number): WeighedMix {
  const weighed = jobs.map((job) => weigh(job, hourValue));
  const both = weighed.flatMap(({ biMetal, carbide }, i) =>
    biMetal !== undefined && carbide !== undefined ? [{ way: jobs[i]!.carbide!, biMetal, carbide }] : [],
  );
  return {
    jobs: weighed,
    biMetal: allWith(weighed, "biMetal", "carbide"),
    carbide: allWith(weighed, "carbide", "biMetal"),
    best: total(weighed, (job) => (job.takes === undefined ? nothing : job[job.takes])),
    both: both.length,
    ...limits(both, hourValue),
  };
}
