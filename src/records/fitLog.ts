import { limitNames, type CutRun, type LimitName } from "../cutting/cut";
import { recordsConstants as k } from "../data/recordsConstants";
import type { Phrase } from "../phrase";
import { twoLevel, type TwoLevels } from "../statistics/twoLevel";
import type { LoggedCut } from "./loggedCut";
import { outliers } from "./outliers";

/** An observation with its group and class of blade, its cut as a function of the factor, and the factor solved. */
export interface SolvedCut {
  readonly cut: LoggedCut;
  readonly group: string;
  readonly run: (factor: number) => CutRun;
  /** Or the reason why there is none. */
  readonly factor: number | Phrase;
}

export interface FittedLog {
  readonly fit: TwoLevels;
  /** Groups in the order of fit.groups. */
  readonly groups: readonly string[];
  readonly used: readonly SolvedCut[];
  readonly held: readonly { readonly solved: SolvedCut; readonly by: LimitName }[];
  /** Distance of ln of the factor from the median of the others. */
  readonly outlying: readonly { readonly solved: SolvedCut; readonly distance: number }[];
  readonly unsolved: readonly { readonly solved: SolvedCut; readonly why: Phrase }[];
}

const assumed = {
  shop: k.betweenShops.value,
  group: k.betweenGroups.value,
  value: k.betweenCuts.value,
  worth: k.scatterWorth.value,
};

/** What holds a cut at a factor, where its rate moves by less than half as much as the factor; else undefined. */
function heldBy(run: SolvedCut["run"], factor: number): LimitName | undefined {
  const step = k.slopeStep.value;
  const [below, above] = [run(factor * Math.exp(-step)), run(factor * Math.exp(step))];
  if (Math.log(above.rate / below.rate) / (2 * step) >= k.heldSlope.value) return undefined;
  const limits = limitNames.filter((name) => name !== "usual rate");
  return limits.reduce((a, b) => (above.shares[b] > above.shares[a] ? b : a));
}

/** A fit without the cuts that are held: outliers out, then the two levels. */
function fitRound(solved: readonly SolvedCut[], held: readonly (LimitName | undefined)[]): FittedLog {
  const own = solved.filter((_, i) => held[i] === undefined);
  const values = own.flatMap((s) => (typeof s.factor === "number" ? [{ s, value: Math.log(s.factor) }] : []));
  const distances = outliers(values.map(({ s, value }) => ({ group: s.group, value })));
  const kept = values.filter((_, i) => distances[i] === undefined);
  const groups = [...new Set(kept.map(({ s }) => s.group))];
  const ofGroup = groups.map((name) => kept.filter(({ s }) => s.group === name).map(({ value }) => value));
  return {
    fit: twoLevel(ofGroup, assumed),
    groups,
    used: kept.map(({ s }) => s),
    held: solved.flatMap((s, i) => (held[i] === undefined ? [] : [{ solved: s, by: held[i] }])),
    outlying: values.flatMap(({ s }, i) => (distances[i] === undefined ? [] : [{ solved: s, distance: distances[i] }])),
    unsolved: own.flatMap((s) => (typeof s.factor === "number" ? [] : [{ solved: s, why: s.factor }])),
  };
}

/** What holds each cut at the factor fitted for its group; equal cuts are asked once. */
function judgeHeld(solved: readonly SolvedCut[], { fit, groups }: FittedLog): readonly (LimitName | undefined)[] {
  const asked = new Map<SolvedCut["run"], LimitName | undefined>();
  return solved.map(({ run, group }) => {
    if (!asked.has(run)) {
      const middle = fit.groups[groups.indexOf(group)]?.middle ?? fit.shop;
      asked.set(run, heldBy(run, Math.exp(middle)));
    }
    return asked.get(run);
  });
}

/**
 * Fits the factors of a log in rounds: all cuts, then twice without those that something else holds at the factor fitted
 * for their group. A cut is not judged at its own factor: a slow one would then count and a fast one not.
 * @param solved observations with their factors [-]
 * @returns the fit of ln of the factor [-], and which cuts were used, held, outlying or without a factor
 * @source model: twoLevel; outliers: outliers; held by its slope: judgement, data/recordsConstants
 */
export function fitLog(solved: readonly SolvedCut[]): FittedLog {
  const all = fitRound(
    solved,
    solved.map(() => undefined),
  );
  const first = fitRound(solved, judgeHeld(solved, all));
  return fitRound(solved, judgeHeld(solved, first));
}
