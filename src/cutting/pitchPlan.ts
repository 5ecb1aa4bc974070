import { inch } from "../quantities";
import type { BladeClass } from "../blade/bladeClass";
import type { Pitch } from "../blade/pitch";
import { readPitch } from "../blade/readPitch";
import { cuttingConstants as k, madePitches, pitchPoints } from "../data/cuttingConstants";
import type { Group } from "../data/groups";
import type { Profile } from "../section/profile";
import { logLine } from "./logLine";

/** What the work asks of the tooth pitch, whatever the saw. */
export interface PitchPlan {
  /** Pitches made in the class, fine to coarse. */
  readonly made: readonly Pitch[];
  /** Pitch of the size, ps [mm]. */
  readonly bySize: number;
  /** Pitch aimed at p* [mm]. */
  readonly target: number;
  /** Two teeth stand in the thinnest lasting part. */
  readonly lawful: (pitch: Pitch) => boolean;
  /** The lawful pitch of a list, fine to coarse, nearest to p* in ln p; of two as near the finer. */
  readonly nearest: (list: readonly Pitch[]) => Pitch | undefined;
  /** The best pitch made: the nearest lawful one; in hollow work also the finest bi-metal one with 0.75 of a tooth in the wall. */
  readonly best: Pitch | undefined;
  /** Rate at a pitch against the rate at the best pitch made, g [-]. */
  readonly factor: (pitch: Pitch) => number;
}

const made: Readonly<Record<BladeClass, readonly Pitch[]>> = {
  "bi-metal": madePitches["bi-metal"].map(readPitch),
  carbide: madePitches.carbide.map(readPitch),
};
const sizePitch = pitchPoints.map(({ width, value }) => [width * inch, readPitch(value).mean] as const);

const off = (pitch: Pitch, target: number): number => Math.abs(Math.log(pitch.mean / target));

/**
 * The pitch that a work asks for: p* = max(finest made, min(ps(W)·(1.4 in bulky metals), t/2)) with ps straight in ln W
 * between the handbook's points; lawful where t/p ≥ 2·0.98, t the thinnest lasting part. Away from the best pitch pb the
 * rate falls as the ratio of the pitches: g = min(1, exp(|ln(pb/p*)| − |ln(p/p*)|)). Too fine, the gullets hold in
 * proportion to the pitch; too coarse, the teeth in contact are fewer in proportion.
 * @param input profile W, t [mm]; group; blade class
 * @returns pitches made, target [mm], rule, choice and factor g [-]
 * @source Machinery's Handbook, 31st ed., p. 1245 (read); two teeth: US Navy training manual on machine tools (read); g: derived, two published steps, 4/6 for 3/4 gives 0.70 (read 0.70), 1.4/2.5 for 2/3 gives 0.78 (read 0.72)
 */
export function pitchPlan({
  profile: { meanWidth, thinnest, kind },
  group,
  blade,
}: {
  readonly profile: Profile;
  readonly group: Group;
  readonly blade: BladeClass;
}): PitchPlan {
  const own = made[blade];
  const [finest] = own as [Pitch, ...Pitch[]];
  const bySize = logLine(sizePitch, meanWidth, "goes on") * (group.bulky ? k.bulkyPitch.value : 1);
  const target = Math.max(finest.mean, Math.min(bySize, thinnest / k.fewestTeeth.value));
  const lawful = (pitch: Pitch): boolean => thinnest / pitch.mean >= k.fewestTeeth.value * k.ruleSlack.value;
  const nearest = (list: readonly Pitch[]): Pitch | undefined =>
    list
      .filter(lawful)
      .reduce<Pitch | undefined>(
        (a, b) => (a === undefined || off(b, target) < off(a, target) - 1e-12 ? b : a),
        undefined,
      );
  const solid = kind === "solid" || kind === "bundle of solids";
  const light = blade === "bi-metal" && !solid && thinnest / finest.mean >= k.finestTeeth.value;
  const best = nearest(own) ?? (light ? finest : undefined);
  const free = best === undefined ? 0 : off(best, target);
  const factor = (pitch: Pitch): number => Math.min(1, Math.exp(free - off(pitch, target)));
  return { made: own, bySize, target, lawful, nearest, best, factor };
}
