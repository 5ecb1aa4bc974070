import type { Blade } from "./blade";
import { bladeHours } from "./bladeHours";

type Changed = Blade & { readonly change: number };

/** Which saw hour values at least favour `one` over `other`, as [from, to]; costs are straight lines over the value. */
function against(one: Changed, other: Changed): readonly [number, number] {
  const wear = one.price / one.life - other.price / other.life;
  const [ownHours, otherHours] = [
    bladeHours({ blade: one, change: one.change }),
    bladeHours({ blade: other, change: other.change }),
  ];
  const hours = ownHours - otherHours;
  if (Math.abs(hours) <= 1e-9 * otherHours)
    return wear <= 1e-9 * (other.price / other.life) ? [0, Infinity] : [Infinity, 0];
  const value = -wear / hours;
  return hours < 0 ? [value, Infinity] : [0, value];
}

/**
 * The saw hour values between which one of several blades is the cheapest, or as cheap as another: from the greatest lower
 * crossing to the least upper one, w = (p₂/l₂ − p₁/l₁)/(H₁ − H₂).
 * @param input blade and all blades: price [money], life [area], rate [area/min], change [min]
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
