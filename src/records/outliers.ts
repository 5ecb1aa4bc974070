import { recordsConstants as k } from "../data/recordsConstants";

/** A value with the group it belongs to. */
export interface Grouped {
  readonly group: string;
  readonly value: number;
}

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return Number.isInteger(half) ? (sorted[half - 1]! + sorted[half]!) / 2 : sorted[Math.floor(half)]!;
};

/**
 * How far each value is from the median of its group, or of all while the group has fewer than four, where that is more
 * than 3.5 × 1.4826 × the median absolute deviation, which is at least 0.05.
 * @param values with their groups [any unit]
 * @returns distance of an outlier from the median, with its sign [same unit]; undefined for every other value
 * @source modified z-score, Iglewicz and Hoaglin 1993 (from memory)
 */
export function outliers(values: readonly Grouped[]): readonly (number | undefined)[] {
  const rule = (among: readonly number[]) => {
    const middle = median(among);
    const deviation = Math.max(k.leastDeviation.value, median(among.map((v) => Math.abs(v - middle))));
    return { middle, most: k.outlierTimes.value * k.deviationScale.value * deviation };
  };
  const all = values.length === 0 ? { middle: 0, most: 0 } : rule(values.map((v) => v.value));
  const groups = new Map<string, number[]>();
  for (const { group, value } of values) groups.set(group, [...(groups.get(group) ?? []), value]);
  const rules = new Map(
    [...groups].map(([name, own]) => [name, own.length < k.ownGroupFrom.value ? all : rule(own)] as const),
  );
  return values.map(({ group, value }) => {
    const { middle, most } = rules.get(group)!;
    return Math.abs(value - middle) > most ? value - middle : undefined;
  });
}
