import type { Pitch } from "../blade/pitch";
import type { Profile } from "../section/profile";

/**
 * Mean chip thickness, f = rate·p/(v·W): what a tooth takes on the mean width.
 * @param input rate [mm²/min]; pitch p [mm]; speed v [mm/min]; profile W [mm]
 * @returns f [mm]
 * @source area rate = speed × chip × teeth in contact: German vocational tables book, sawing page (read)
 */
export function meanChip({
  rate,
  pitch,
  speed,
  profile,
}: {
  readonly rate: number;
  readonly pitch: Pitch;
  readonly speed: number;
  readonly profile: Profile;
}): number {
  return (rate * pitch.mean) / (speed * profile.meanWidth);
}
