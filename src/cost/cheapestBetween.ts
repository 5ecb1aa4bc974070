import type { Blade } from "./blade";
import { bladeHours } from "./bladeHours";

type Changed = Blade & { readonly change: number };

/** Which saw hour values at least favour `one` over `other`, as [from, to]; costs are straight lines over the value. */
function against(one: Changed, other: Changed): readonly [number, number] {
  const fixed = ({ price, life, kerf = 0 }: Changed): number => price / life + kerf;
  const wear = fixed(one) - fixed(other);
  const [ownHours, otherHours] = [
    bladeHours({ blade: one, change: one.change }),
    bladeHours({ blade: other, change: other.change }),
  ];
  const hours = ownHours - otherHours;
  if (Math.abs(hours) <= 1e-9 * otherHours) return wear <= 1e-9 * fixed(other) ? [0, Infinity] : [Infinity, 0];
  const value = -wear / hours;
  return hours < 0 ? [value, Infinity] : [0, value];
}

/**
 * The saw hour values between which one of several blades is the cheapest, or as cheap as another: from the greatest lower
 * crossing to the least upper one, w = (p₂/l₂ + k₂ − p₁/l₁ − k₁)/(H₁ − H₂).
 * @param input blade and all blades: price [money], life [area], rate [area/min], kerf k [money/area], change [min]
 * @returns from and to [money/h], to may be Infinity; undefined where the blade is never the cheapest
 * @source derived: lower envelope of straight lines
 */
export function cheapestBetween({
  blade,
  all,
}: {
  readonly blade: Changed;
  readonly all: readonly Changed[];
}): { readonly from: number; readonly to: number } | undefined {
  const ranges = all.filter((other) => other !== blade).map((other) => against(blade, other));
  const from = Math.max(0, ...ranges.map((r) => r[0]));
  const to = Math.min(...ranges.map((r) => r[1]), Infinity);
  return to >= 0 && from <= to * (1 + 1e-9) ? { from, to } : undefined;
}
