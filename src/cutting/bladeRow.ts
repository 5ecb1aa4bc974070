import type { BladeRow, Group } from "../data/groups";
import { InputError } from "../errors";
import type { Material } from "../material/material";
import type { BladeClass } from "../blade/bladeClass";

/**
 * The cutting group of a material and its row of band speeds and chip thicknesses for a class of blade.
 * @param material a grade; blade the class of band
 * @returns group and row; speeds [mm/min], chips [mm]
 * @throws InputError "none": no cutting data for the grade, or too hard for bi-metal teeth
 * @source data/groups
 */
export function bladeRow(material: Material, blade: BladeClass): { readonly group: Group; readonly row: BladeRow } {
  const { group } = material;
  if (group === undefined)
    throw new InputError("none", "", "No cutting data for {material}; type your own rate", { material: material.name });
  const row = group.blades[blade];
  if (row === undefined)
    throw new InputError("none", "", "{material} is too hard for bi-metal teeth; use carbide", {
      material: material.name,
    });
  return { group, row };
}
