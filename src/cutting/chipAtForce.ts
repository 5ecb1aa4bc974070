import { cuttingConstants as k } from "../data/cuttingConstants";
import { cuttingForce } from "./cuttingForce";
import type { ForceLaw } from "./cut";

/**
 * Chip thickness at which the cutting force is F, the inverse of cuttingForce in closed form: with F5 the force at the
 * chip f5 = 5 µm / m, f = f5·F/F5 below it and f5·(F/F5)^(1/(1-mc)) above.
 * @param input force F [N]; teeth z in contact [-]; law kc11 [N/mm²], mc [-], kerf × factors [mm]
 * @returns f [mm]
 * @source derived from Kienzle's law as cuttingForce states it
 */
export function chipAtForce({
  force,
  teeth,
  law,
}: {
  readonly force: number;
  readonly teeth: number;
  readonly law: ForceLaw;
}): number {
  const edge = k.leastLawChip.value / k.set.value;
  const ratio = force / cuttingForce({ chip: edge, teeth, law });
  return ratio <= 1 ? edge * ratio : edge * ratio ** (1 / (1 - law.mc));
}
