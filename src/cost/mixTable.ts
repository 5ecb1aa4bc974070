import { cuttingConstants } from "../data/cuttingConstants";
import { recordsConstants } from "../data/recordsConstants";
import { minutesPerHour } from "../quantities";
import { InputError } from "../errors";
import type { Text } from "../phrase";
import type { JobWay } from "./jobWay";
import { mixVerdict, type MixSums } from "./mixVerdict";
import type { MixJob, Spent, WeighedJob, WeighedMix } from "./weighMix";

/** A row of the order book: its job with both classes, and what cannot be made and why. */
export interface BookRow {
  readonly row: number;
  readonly size: string;
  readonly material: string;
  readonly job: MixJob<JobWay>;
  readonly why: Text;
}

/** A job, or a row about the whole; undefined: nothing belongs there. */
export interface MixRow {
  readonly what: Text;
  readonly material: Text | undefined;
  readonly cuts: number | undefined;
  readonly area: number | undefined;
  readonly "bi-metalMinutes": number | undefined;
  readonly "bi-metalLow": number | undefined;
  readonly "bi-metalHigh": number | undefined;
  readonly "bi-metalBlades": number | undefined;
  readonly "bi-metalCost": number | undefined;
  readonly carbideMinutes: number | undefined;
  readonly carbideLow: number | undefined;
  readonly carbideHigh: number | undefined;
  readonly carbideBlades: number | undefined;
  readonly carbideCost: number | undefined;
  readonly hoursFreed: number | undefined;
  readonly saving: number | undefined;
  readonly cheaper: Text | undefined;
  readonly note: Text;
}

type Class = "biMetal" | "carbide";
const names: Readonly<Record<Class, string>> = { biMetal: "bi-metal", carbide: "carbide" };
const blank: Omit<MixRow, "what" | "note"> = {
  material: undefined,
  cuts: undefined,
  area: undefined,
  "bi-metalMinutes": undefined,
  "bi-metalLow": undefined,
  "bi-metalHigh": undefined,
  "bi-metalBlades": undefined,
  "bi-metalCost": undefined,
  carbideMinutes: undefined,
  carbideLow: undefined,
  carbideHigh: undefined,
  carbideBlades: undefined,
  carbideCost: undefined,
  hoursFreed: undefined,
  saving: undefined,
  cheaper: undefined,
};

type Bounded = Partial<Spent> & { readonly low?: number | undefined; readonly high?: number | undefined };
const sides = (biMetal: Bounded | undefined, carbide: Bounded | undefined) => ({
  "bi-metalMinutes": biMetal?.minutes,
  "bi-metalLow": biMetal?.low,
  "bi-metalHigh": biMetal?.high,
  "bi-metalBlades": biMetal?.blades,
  "bi-metalCost": biMetal?.cost,
  carbideMinutes: carbide?.minutes,
  carbideLow: carbide?.low,
  carbideHigh: carbide?.high,
  carbideBlades: carbide?.blades,
  carbideCost: carbide?.cost,
});

const gain = (from: Spent, to: Spent): Pick<MixRow, "hoursFreed" | "saving"> => ({
  hoursFreed: (from.minutes - to.minutes) / minutesPerHour,
  saving: from.cost - to.cost,
});

const cheaperOf = ({ takes, isEqual, biMetal, carbide }: WeighedJob): string => {
  if (takes === undefined) return "neither";
  if (isEqual) return "equal";
  return biMetal === undefined || carbide === undefined ? `${names[takes]} only` : names[takes];
};

const withEnds = (spent: Spent | undefined, way: JobWay | undefined): Bounded | undefined =>
  spent === undefined ? undefined : { ...spent, low: way?.minutesLow, high: way?.minutesHigh };

function jobRow({ size, material, job, why }: BookRow, weighed: WeighedJob): MixRow {
  const made = job.biMetal ?? job.carbide;
  const { biMetal, carbide } = weighed;
  return {
    ...blank,
    what: size,
    material,
    cuts: made?.cuts,
    area: made?.area,
    ...sides(withEnds(biMetal, job.biMetal), withEnds(carbide, job.carbide)),
    ...(biMetal !== undefined && carbide !== undefined ? gain(biMetal, carbide) : {}),
    cheaper: cheaperOf(weighed),
    note: why,
  };
}

const sum = <T>(list: readonly T[], of: (each: T) => number | undefined): number =>
  list.reduce((s, each) => s + (of(each) ?? 0), 0);
const both = (rows: readonly BookRow[], own: Class, other: Class) => ({
  low: sum(rows, ({ job }) => (job[own] ?? job[other])?.minutesLow),
  high: sum(rows, ({ job }) => (job[own] ?? job[other])?.minutesHigh),
});

/** Rows that take a class. */
const taking = (rows: readonly BookRow[], { jobs }: WeighedMix, one: Class): readonly number[] =>
  rows.flatMap((_, i) => (jobs[i]!.takes === one ? [i] : []));

/** "carbide for 17-4PH, 304", each grade once; a few are named and the rest counted. */
function gradesFor(rows: readonly BookRow[], taken: readonly number[], one: Class): string {
  const grades = [...new Set(taken.map((i) => rows[i]!.material))];
  if (grades.length === 0) return `${names[one]} for none`;
  const named = grades.slice(0, 2 * recordsConstants.namedRows.value);
  const rest = grades.length - named.length;
  return `${names[one]} for ${named.join(", ")}${rest > 0 ? ` and ${rest} more` : ""}`;
}

function bestRow(rows: readonly BookRow[], weighed: WeighedMix): MixRow {
  const part = (one: Class): Bounded => {
    const taken = taking(rows, weighed, one);
    const of = (key: keyof Spent): number => sum(taken, (i) => weighed.jobs[i]![one]![key]);
    return {
      minutes: of("minutes"),
      blades: of("blades"),
      cost: of("cost"),
      low: sum(taken, (i) => rows[i]!.job[one]!.minutesLow),
      high: sum(taken, (i) => rows[i]!.job[one]!.minutesHigh),
    };
  };
  const grades = (one: Class): string => gradesFor(rows, taking(rows, weighed, one), one);
  return {
    ...blank,
    what: "each job with the cheaper",
    ...sides(part("biMetal"), part("carbide")),
    ...gain(weighed.biMetal, weighed.best),
    note: `${grades("carbide")}; ${grades("biMetal")}`,
  };
}

/** The buyer's list: what to order of each class and pitch when each job takes the cheaper one. */
function orderRows(rows: readonly BookRow[], weighed: WeighedMix): readonly MixRow[] {
  const all = new Map<string, { readonly one: Class; readonly pitch: string; area: number; blades: number }>();
  weighed.jobs.forEach(({ takes, ...spent }, i) => {
    if (takes === undefined) return;
    const way = rows[i]!.job[takes]!;
    const key = `${names[takes]} ${way.pitch}`;
    const kept = all.get(key) ?? { one: takes, pitch: way.pitch, area: 0, blades: 0 };
    all.set(key, {
      ...kept,
      area: kept.area + way.area,
      blades: kept.blades + spent[takes]!.blades,
    });
  });
  const sorted = [...all].sort(([a], [b]) => (a < b ? -1 : 1));
  return sorted.map(([key, { one, area, blades }]) => ({
    ...blank,
    what: `to order: ${key}`,
    area,
    ...sides(one === "biMetal" ? { blades } : undefined, one === "carbide" ? { blades } : undefined),
    note: "if each job takes the cheaper",
  }));
}

/** A value where there is one, and in words why there is none. */
function limitRows({ highestPrice, shortestLife, lifeShare }: WeighedMix): readonly MixRow[] {
  const price = { ...blank, what: "highest carbide price" };
  const life = { ...blank, what: "shortest carbide life" };
  const digits = cuttingConstants.saidDigits.value;
  return [
    highestPrice instanceof InputError
      ? { ...price, note: highestPrice.problem }
      : {
          ...price,
          carbideCost: highestPrice,
          note: "both classes then cost the same over the jobs that both can make",
        },
    shortestLife instanceof InputError || lifeShare instanceof InputError
      ? { ...life, note: (lifeShare as InputError).problem }
      : {
          ...life,
          area: shortestLife,
          note: `a blade, mean over the mix: ${Number(lifeShare.toPrecision(digits))} times the lives given`,
        },
  ];
}

/**
 * The table of an order book: a row a job, all jobs each way, each with its cheaper class, the blades to order, the limits of
 * price and life, the verdict.
 * @param rows of the order book
 * @param weighed the same jobs, weighed
 * @returns rows with area [mm²], minutes [min], hoursFreed [h], blades and cuts [-], costs [money], texts [text]
 * @source definition
 */
export function mixTable(rows: readonly BookRow[], weighed: WeighedMix): readonly MixRow[] {
  const made = rows.filter(({ job }) => job.biMetal !== undefined || job.carbide !== undefined);
  const sums: MixSums = {
    ...weighed,
    biMetal: { ...weighed.biMetal, ...both(made, "biMetal", "carbide") },
    carbide: { ...weighed.carbide, ...both(made, "carbide", "biMetal") },
    leftOut: rows.length - made.length,
  };
  const one = made.length - weighed.both;
  const verdict: MixRow = { ...blank, what: "verdict", note: mixVerdict(sums) };
  const list = rows.map((row, i) => jobRow(row, weighed.jobs[i]!));
  if (made.length === 0) return [...list, verdict];
  const all: MixRow = {
    ...blank,
    what: "all jobs",
    cuts: sum(made, ({ job }) => (job.biMetal ?? job.carbide)!.cuts),
    area: sum(made, ({ job }) => (job.biMetal ?? job.carbide)!.area),
    ...sides(sums.biMetal, sums.carbide),
    ...gain(weighed.biMetal, weighed.carbide),
    note: one === 0 ? "" : `${one} that one class cannot make stand with the other in both`,
  };
  return [...list, all, bestRow(rows, weighed), ...orderRows(rows, weighed), ...limitRows(weighed), verdict];
}
