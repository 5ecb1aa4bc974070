import type { BladeClass } from "../blade/bladeClass";
import type { Pitch } from "../blade/pitch";
import type { BladeRow, Group } from "../data/groups";
import type { Material } from "../material/material";
import type { Profile, Station } from "../section/profile";
import type { Shape } from "../section/shape";
import type { Shop } from "../shop/shop";
import type { CutSpeed } from "./cutSpeed";
import type { PitchPlan } from "./pitchPlan";
import type { Band } from "./usualBand";

/** What is to be cut, with what, on which saw. */
export interface CutWork {
  readonly section: Shape;
  readonly material: Material;
  readonly blade: BladeClass;
  readonly shop: Shop;
}

/** The same with a pitch that is given, or undefined: chosen. */
export interface PitchedWork extends CutWork {
  readonly pitch: Pitch | undefined;
}

/** What can hold a cut back at one depth. */
export const limitNames = ["usual rate", "gullet", "feed force", "maximum feed", "motor power"] as const;
export type LimitName = (typeof limitNames)[number];

/** Specific cutting force kc = kc11·h^-mc and the kerf that it acts on. */
export interface ForceLaw {
  readonly kc11: number;
  readonly mc: number;
  /** Kerf × factors of sawing and wear [mm]. */
  readonly kerf: number;
}

/** The saw's limits that a cut meets on its way; undefined is no limit. */
export interface SawLimits {
  readonly maximumFeed: number | undefined;
  /** Feed force that the saw can give and the band can stand at an extent [mm] of the work [N]. */
  readonly feedForce: ((extent: number) => number) | undefined;
  /** Power at the band [W]. */
  readonly power: number | undefined;
  readonly constantFeed: boolean;
}

/** What the saw brings to a cut. */
export interface CutSaw {
  readonly band: Band;
  /** Free length of the band between the guides [mm]. */
  readonly span: number;
  readonly force: ForceLaw;
  readonly limits: SawLimits;
}

/** One cut at one pitch, ready to be taken down its way. */
export interface Cut {
  readonly speeds: CutSpeed;
  readonly saw: CutSaw;
  readonly profile: Profile;
  readonly group: Group;
  readonly row: BladeRow;
  readonly pitch: Pitch;
  readonly plan: PitchPlan;
  /** Rate at this pitch against the best pitch made, g [-]. */
  readonly pitchFactor: number;
  /** Area cut per length of band travel with six teeth or more in contact, all factors in, b [mm]. */
  readonly bite: number;
  /** The most that the gullets of the pitch aimed at carry away, as a bite [mm]. */
  readonly room: number;
  /** Factors on the bite: interruption and worn saw [-]. */
  readonly interruption: number;
  readonly worn: number;
  /** The shop's rate factor for this material [-]. */
  readonly rateFactor: number;
  /** What stands behind it, as the shop block says beside it: "7 own cuts". */
  readonly factorFrom: string | undefined;
  /** The shop's rate spread for this material [-]. */
  readonly rateSpread: number | undefined;
  /** Nothing published and nothing of the shop's own stands behind the rate. */
  readonly judged: boolean;
  /** Speed wanted over the band's where the saw cannot run as slowly; 1 otherwise [-]. */
  readonly credit: number;
  /** Stations of the way down, split where the usual rate changes its law; the last is the widest contact, without travel. */
  readonly stations: readonly Station[];
}

/** What the way down gives. */
export interface CutRun {
  /** Minutes of cutting [min]. */
  readonly minutes: number;
  /** Area / minutes [mm²/min]. */
  readonly rate: number;
  /** Share of the time that each limit holds [-]. */
  readonly shares: Readonly<Record<LimitName, number>>;
  /** Mean band speed over the time [mm/min]. */
  readonly speed: number;
  /** Greatest cutting force [N] and power at the band [W] on the way. */
  readonly greatestForce: number;
  readonly greatestPower: number;
  /** Fullest gullet on the way; 1 is all that may fill [-]. */
  readonly gulletFill: number;
  /** Share of the area that the feed force holds [-], and the area's mean chip before motor and maximum feed [mm]. */
  readonly pushed: number;
  readonly pushedChip: number;
  /** Depth [mm] at which a constant feed is held back; the whole feed is what this depth allows. */
  readonly governingDepth: number;
}
