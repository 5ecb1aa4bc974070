import type { Shape } from "../section/shape";

/**
 * Minutes of cutting at a constant removal rate, T = A/rate; with a greatest feed, T = Σ travel / min(greatest feed,
 * rate / contact) over the way down: the saw cannot feed faster where the contact is short.
 * @param input section A [mm²]; rate [mm²/min]; greatestFeed [mm/min] or undefined
 * @returns T [min]
 * @throws InputError "invalid": a greatest feed is given and the size is only an area
 * @source derived from area rate = feed × contact
 */
export function cuttingMinutes({ section, rate, greatestFeed }: { readonly section: Shape; readonly rate: number; readonly greatestFeed: number | undefined }): number {
  if (greatestFeed === undefined) return section.area / rate;
  return section.profile().stations.reduce((sum, s) => sum + s.travel * Math.max(s.contact / rate, 1 / greatestFeed), 0);
}
