import { cuttingConstants as k } from "../data/cuttingConstants";
import type { Group } from "../data/groups";

/**
 * The most that the gullets of a pitch carry away per band travel, as a bite: 0.25·0.7·p/R. A gullet of 0.25·p² that may
 * fill by 0.7 holds chips that take R times the room of the metal.
 * @param pitch p [mm]
 * @param group chip volume ratio R [-]
 * @returns bite [mm]
 * @source derived; the gullet: memory, its fill: common practice, data/cuttingConstants
 */
export function gulletRoom(pitch: number, { chipVolume }: Group): number {
  return (k.gulletArea.value * k.gulletFill.value * pitch) / chipVolume;
}
