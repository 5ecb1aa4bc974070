import type { Group } from "../data/groups";
import type { Profile } from "../section/section";
import type { Pitch } from "../blade/pitch";

/** What can hold a cut back at one depth. */
export const limitNames = ["usual rate", "tooth load", "gullet", "maximum feed", "feed force", "motor power"] as const;
export type LimitName = (typeof limitNames)[number];

/** Chip thickness asked for, for one work in one saw. */
export interface Chips {
  /** Nominal chip thickness × teeth at the reference, all factors in [mm]: the chip is this over the teeth in contact. */
  readonly load: number;
  /** The same without the factor of an interrupted cut [mm]. */
  readonly fullLoad: number;
  /** No factor thins the chip below this [mm]. */
  readonly floor: number;
  /** Nominal chip thickness of the group, all factors in [mm]. */
  readonly nominal: number;
  /** Greatest chip thickness that a tooth of this group stands [mm]. */
  readonly greatest: number;
  /** Speed of the group over the band's where the saw cannot run as slowly; 1 otherwise [-]. */
  readonly credit: number;
}

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
  /** Cutting force that the given depth's extent [mm] allows [N]. */
  readonly cuttingForce: ((extent: number) => number) | undefined;
  /** Power at the band [W]. */
  readonly power: number | undefined;
  readonly constantFeed: boolean;
}

/** One cut, ready to be integrated over its way down. */
export interface Cut {
  readonly profile: Profile;
  readonly group: Group;
  readonly pitch: Pitch;
  /** Band speed [mm/min]. */
  readonly speed: number;
  readonly chips: Chips;
  readonly force: ForceLaw;
  readonly limits: SawLimits;
  /** Chip volume ratio R [-]. */
  readonly chipVolume: number;
}

/** What the integration over the way down gives. */
export interface CutRun {
  /** Minutes of cutting [min]. */
  readonly minutes: number;
  /** Area / minutes [mm²/min]. */
  readonly rate: number;
  /** Share of the time that each limit holds [-], in the order of limitNames. */
  readonly shares: readonly number[];
  /** Mean chip thickness over the cut area [mm]. */
  readonly meanChip: number;
  /** Greatest cutting force [N] and power at the band [W] on the way. */
  readonly greatestForce: number;
  readonly greatestPower: number;
  /** Fullest gullet on the way, chips / room that may fill [-]. */
  readonly gulletFill: number;
  /** Share of the cut area with chips thinner than `floor`'s caution limit [-]. */
  readonly thinShare: number;
  /** Depth [mm] at which a constant feed is held back; the whole feed is what this depth allows. */
  readonly governingDepth: number;
}
