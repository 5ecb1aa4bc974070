import { cuttingConstants as k } from "../data/cuttingConstants";
import type { ForceLaw } from "./cut";

/**
 * Cutting force of the teeth in contact, Fc = b·K·z·f·kc11·h^-mc with the local chip h = max(5 µm, m·f), m = 2.
 * @param input chip f mean chip thickness [mm]; teeth z in contact [-]; law kc11 [N/mm²], mc [-], kerf × factors b·K [mm]
 * @returns Fc [N]
 * @source Kienzle's law; Fc = b·f·z·kc·K, German vocational tables book, sawing page (read); held below 5 µm: judgement
 */
export function cuttingForce({
  chip,
  teeth,
  law,
}: {
  readonly chip: number;
  readonly teeth: number;
  readonly law: ForceLaw;
}): number {
  const local = Math.max(k.leastLawChip.value, k.set.value * chip);
  return law.kerf * teeth * chip * law.kc11 * local ** -law.mc;
}
