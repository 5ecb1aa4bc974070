import type { Material } from "./material";

/**
 * Mass of a piece, m = A·length·density, of one bar: a bundle or a mitre changes nothing.
 * @param input area A of the bar, square cut [mm²]; length of the piece [mm]; material, its density [kg/mm³]
 * @returns m [kg]
 * @source definition
 */
export function pieceMass({
  area,
  length,
  material,
}: {
  readonly area: number;
  readonly length: number;
  readonly material: Pick<Material, "density">;
}): number {
  return area * length * material.density;
}
