import { generalCautions, hazardTexts } from "../data/cautions";
import type { Material } from "../material/material";

/**
 * The cautions that travel with a cut: the material's hazards first, then the general ones, deferring to the machine's
 * manual, local codes and a qualified person.
 * @param material a grade
 * @returns sentences [text]
 * @source data/cautions
 */
export function cautionsOf({ hazards }: Material): string {
  return [...hazards.map((h) => hazardTexts.get(h) ?? ""), ...generalCautions].filter((t) => t !== "").join(" ");
}
