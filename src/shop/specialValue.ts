import type { BladeClass } from "../blade/bladeClass";
import type { Material } from "../material/material";
import type { Special } from "./shop";

/**
 * What the shop block gives for one material: a value for the grade wins over one for its cutting group.
 * @param specials values of one label for groups and grades, some for one class of blade only [-]
 * @param material a grade
 * @param blade the class of blade, where values may differ by it
 * @returns the value in the label's own unit with what stands behind it [-]; undefined where none holds for the grade
 * @source the shop's own data
 */
export function specialValue(
  specials: readonly Special[],
  { key, group }: Material,
  blade?: BladeClass,
): Special | undefined {
  const of = (name: string | undefined): Special | undefined =>
    specials.find((s) => s.of === name && (s.blade === undefined || s.blade === blade));
  return of(key) ?? of(group?.name) ?? of(group?.label);
}
