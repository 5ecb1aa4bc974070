import type { Material } from "../material/material";
import type { Special } from "./shop";

/**
 * The value that the shop block gives for one material: one for the grade wins over one for its cutting group.
 * @param specials values of one label for groups and grades [-]
 * @param material a grade
 * @returns the value in the label's own unit [-]; undefined where none holds for it
 * @source the shop's own data
 */
export function specialValue(specials: readonly Special[], { key, group }: Material): number | undefined {
  const of = (name: string | undefined): number | undefined => specials.find((s) => s.of === name)?.value;
  return of(key) ?? of(group?.name) ?? of(group?.label);
}
