import type { BladeClass } from "../blade/bladeClass";
import { cuttingConstants as k } from "../data/cuttingConstants";
import type { BladeRow, Group } from "../data/groups";
import { InputError } from "../errors";
import type { Material } from "../material/material";

/** The row of a group with the grade's own band speed and bite in it. */
function graded(group: Group, row: BladeRow, { bandSpeed, biteFactor }: Material, blade: BladeClass): BladeRow {
  const share = blade === "carbide" ? k.carbideShare.value : 1;
  const usual = group.blades["bi-metal"]?.speed;
  const faster = bandSpeed === undefined || usual === undefined ? 1 : (bandSpeed.value / usual) ** share;
  // Only bi-metal in the grade itself is what its source says; carbide keeps the words of its group.
  const speed = blade === "carbide" ? row.basis.speed : (bandSpeed?.basis ?? row.basis.speed);
  return {
    speed: row.speed * faster,
    bite: row.bite * (biteFactor?.value ?? 1) ** share,
    spread: row.spread,
    basis: { ...row.basis, speed },
  };
}

/**
 * The cutting group of a material and its row for a class of blade, with the grade's own band speed and bite in it: for
 * bi-metal v = v of the grade and b = b of the group × k of the grade; for carbide v = v of the group × (v of the grade /
 * bi-metal v of the group)^0.5 and b = b of the group × k^0.5. A grade without its own takes the group's.
 * @param material a grade; blade the class of band
 * @returns group and row: speed [mm/min], bite [mm], spread [-], each with its basis
 * @throws InputError "none": no cutting data for the grade, or too hard for bi-metal teeth
 * @source data/groups, data/gradeSpeeds; the exponent: judgement, data/cuttingConstants
 */
export function bladeRow(material: Material, blade: BladeClass): { readonly group: Group; readonly row: BladeRow } {
  const { group, bandSpeed, biteFactor } = material;
  if (group === undefined)
    throw new InputError("none", "", "No cutting data for {material}; type your own rate", { material: material.name });
  const row = group.blades[blade];
  if (row === undefined)
    throw new InputError("none", "", "{material} is too hard for bi-metal teeth; use carbide", {
      material: material.name,
    });
  const own = bandSpeed !== undefined || biteFactor !== undefined;
  return { group, row: own ? graded(group, row, material, blade) : row };
}
