import type { Material } from "../material/material";
import type { Section } from "./section";

/**
 * Mass of a piece, m = A·length·density, of one bar: a bundle or a mitre changes nothing.
 * @param input section, the bar's size; length of the piece [mm]; material, its density [kg/mm³]
 * @returns m [kg]
 * @source definition
 */
export function pieceMass({ section, length, material }: { readonly section: Section; readonly length: number; readonly material: Pick<Material, "density"> }): number {
  return section.pieceArea * length * material.density;
}
