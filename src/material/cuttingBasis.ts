import type { Basis } from "../data/groups";
import type { Material } from "./material";
import type { Origin } from "./provenance";

const origin = (label: string, { mark, text }: Basis): Origin => ({ label, source: text, mark });

/**
 * Where band speed and bite of a material come from, for each class of blade: the grade's own source before its group's.
 * @param material row of the material table, or of the shop block [-]
 * @returns value, source and mark; none where there is no cutting data [text]
 * @source data/groups, data/gradeSpeeds
 */
export function cuttingBasis({ group, bandSpeed, biteFactor }: Material): readonly Origin[] {
  if (group === undefined) return [];
  const { "bi-metal": biMetal, carbide } = group.blades;
  return [
    ...(biMetal === undefined
      ? []
      : [
          origin("bi-metal band speed", bandSpeed?.basis ?? biMetal.basis.speed),
          origin("bi-metal bite", biMetal.basis.bite),
          ...(biteFactor === undefined ? [] : [origin(`bite × ${biteFactor.value} for the grade`, biteFactor.basis)]),
        ]),
    origin("carbide band speed", carbide.basis.speed),
    origin("carbide bite", carbide.basis.bite),
  ];
}
