import type { Shape } from "../section/shape";
import { splitStations } from "../section/splitStations";

/**
 * Minutes of cutting at a constant removal rate, T = A/rate. With a maximum feed, T = (area where the contact is at
 * least rate/feed) / rate + (height where it is shorter) / feed: the saw cannot feed faster where the contact is short.
 * @param input section A [mm²]; rate [mm²/min]; maximumFeed [mm/min] or undefined
 * @returns T [min]
 * @throws InputError "invalid": a maximum feed is given and the size is only an area
 * @source derived from area rate = feed × contact
 */
export function cuttingMinutes({
  section,
  rate,
  maximumFeed,
}: {
  readonly section: Shape;
  readonly rate: number;
  readonly maximumFeed: number | undefined;
}): number {
  if (maximumFeed === undefined) return section.area / rate;
  const width = rate / maximumFeed;
  return splitStations({ profile: section.profile(), width, sums: true }).reduce(
    (minutes, { contact, travel }) => minutes + (contact >= width ? (contact * travel) / rate : travel / maximumFeed),
    0,
  );
}
