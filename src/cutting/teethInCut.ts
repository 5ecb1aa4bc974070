import type { Profile } from "../section/section";
import type { Pitch } from "../blade/pitch";

/**
 * Teeth in the cut: mean W/p on the mean width, most L/p on the widest contact, fewest in one lasting contact at the
 * coarse end of the pitch (the 20 % point of the shortest single contact, by travel).
 * @param input profile [mm]; pitch [mm]
 * @returns mean, most, fewest [-]
 * @source z = L/p: German vocational tables book, sawing page (read); the lasting contact: judgement
 */
export function teethInCut({ profile, pitch }: { readonly profile: Profile; readonly pitch: Pitch }): {
  readonly mean: number;
  readonly most: number;
  readonly fewest: number;
} {
  return {
    mean: profile.meanWidth / pitch.mean,
    most: profile.maximumWidth / pitch.mean,
    fewest: profile.thinnest / pitch.greatest,
  };
}
