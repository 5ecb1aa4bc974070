import type { Blade } from "./blade";
import { bladeHours } from "./bladeHours";

type Changed = Blade & { readonly change: number };

/**
 * The blades that bound where another one is the cheapest: those that no blade beats both in saw hours and in cost at a saw
 * hour value of 0. Every other one costs more than its better at each value, and bounds nothing that the better does not.
 * @param all blades: price [money], life [area], rate [area/min], kerf [money/area], change [min]
 * @returns those that bound, one of equal ones [-]
 * @source derived: lower envelope of straight lines
 */
export function rivalBlades<B extends Changed>(all: readonly B[]): readonly B[] {
  const sorted = all
    .map((blade) => ({
      blade,
      hours: bladeHours({ blade, change: blade.change }),
      wear: blade.price / blade.life + (blade.kerf ?? 0),
    }))
    .sort((a, b) => a.hours - b.hours || a.wear - b.wear);
  let least = Infinity;
  return sorted.flatMap(({ blade, wear }) => {
    if (wear >= least) return [];
    least = wear;
    return [blade];
  });
}
