import { contactSplit } from "../section/contactSplit";
import type { Shape } from "../section/shape";

/**
 * Minutes of cutting at a constant removal rate, T = A/rate. With a greatest feed, T = (area where the contact is at
 * least rate/feed) / rate + (height where it is shorter) / feed: the saw cannot feed faster where the contact is short.
 * @param input section A [mm²]; rate [mm²/min]; greatestFeed [mm/min] or undefined
 * @returns T [min]
 * @throws InputError "invalid": a greatest feed is given and the size is only an area
 * @source derived from area rate = feed × contact
 */
export function cuttingMinutes({
  section,
  rate,
  greatestFeed,
}: {
  readonly section: Shape;
  readonly rate: number;
  readonly greatestFeed: number | undefined;
}): number {
  if (greatestFeed === undefined) return section.area / rate;
  const { wideArea, narrowHeight } = contactSplit({ section, width: rate / greatestFeed });
  return wideArea / rate + narrowHeight / greatestFeed;
}
