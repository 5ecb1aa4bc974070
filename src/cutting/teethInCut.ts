import type { Profile } from "../section/profile";
import type { Pitch } from "../blade/pitch";

/**
 * Teeth in the cut: mean W/p on the mean width, most L/p on the widest contact, fewest t/p in the
 * thinnest lasting contact (a fifth of the way has a shorter single one), all at the mean pitch.
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
    fewest: profile.thinnest / pitch.mean,
  };
}
