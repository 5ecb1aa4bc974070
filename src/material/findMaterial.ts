import { matchMaterial } from "./matchMaterial";
import type { Material } from "./material";

/**
 * The material that a designation names. The one resolver of every material argument; matchMaterial says how it was read.
 * @param designation UNS, AISI, SAE, ASTM, W.-Nr., EN name or number, JIS, plain name, own name or key [text], or a number in a cell [-]
 * @param own materials of the shop block, looked up first by their names [-]
 * @returns the material [-]
 * @throws InputError "invalid": no designation; "none": not in the table, two honest meanings, or a condition that the table lacks
 * @source see matchMaterial
 */
export function findMaterial(designation: string | number, own: readonly Material[]): Material {
  return matchMaterial(designation, own).material;
}
