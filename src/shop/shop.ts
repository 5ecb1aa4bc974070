import type { BladeClass } from "../blade/bladeClass";
import type { Pitch } from "../blade/pitch";
import type { Material } from "../material/material";

/** A value of the shop block that holds for one cutting group or one grade only. */
export interface Special {
  /** Label of a cutting group (tool steel means both of its groups), or key of a material. */
  readonly of: string;
  /** The class of blade that it holds for; undefined: both. */
  readonly blade?: BladeClass;
  readonly value: number;
  /** What stands behind it, as the block says beside it: "7 own cuts". */
  readonly from?: string;
}

/** One saw of the shop block, in core units; undefined means that nothing is known and nothing is assumed. */
export interface Shop {
  readonly hourlyCost: number | undefined;
  /** On top of the saw's hourly cost, for the share of the operator's time that it takes. */
  readonly operatorCost: number | undefined;
  readonly operatorShare: number;
  readonly setupMinutes: number;
  readonly loadMinutes: number;
  readonly handlingMinutes: number;
  readonly changeMinutes: number;
  readonly availability: number;
  readonly minimumCharge: number;
  readonly margin: number;
  readonly motorPower: number | undefined;
  readonly driveEfficiency: number;
  readonly idlePower: number | undefined;
  readonly minimumBandSpeed: number | undefined;
  readonly maximumBandSpeed: number | undefined;
  readonly maximumFeed: number | undefined;
  readonly maximumFeedForce: number | undefined;
  readonly feedMode: "constant rate" | "constant feed";
  readonly maximumWidth: number | undefined;
  readonly maximumHeight: number | undefined;
  readonly guideGap: number;
  readonly bandWidth: number | undefined;
  readonly bandThickness: number | undefined;
  readonly bandTension: number;
  readonly wheelDiameter: number | undefined;
  readonly bandLength: number | undefined;
  readonly kerf: number | undefined;
  readonly pitchesStocked: readonly Pitch[] | undefined;
  readonly coolant: "flood" | "mist" | "dry" | undefined;
  readonly sawCondition: "good" | "worn";
  readonly rateFactor: number;
  /** What stands behind the general factor, as the block says beside it. */
  readonly rateFactorFrom: string | undefined;
  readonly rateFactors: readonly Special[];
  /** Low and high of the rate are ÷ and × this; undefined: the group's own spread. */
  readonly rateSpread: number | undefined;
  readonly rateSpreads: readonly Special[];
  readonly breakInArea: number;
  readonly breakInFeedShare: number;
  readonly prices: Readonly<Record<BladeClass, number | undefined>>;
  readonly lives: Readonly<Record<BladeClass, number | undefined>>;
  readonly specialLives: Readonly<Record<BladeClass, readonly Special[]>>;
  readonly materialPrice: number | undefined;
  readonly scrapPrice: number;
  readonly chargeMaterial: "yes" | "no";
  readonly density: number | undefined;
  readonly trim: number;
  readonly grip: number;
  readonly stockLength: number | undefined;
  readonly usefulRemnant: number | undefined;
  /** Share of a useful remnant's value that is not credited. */
  readonly remnantDiscount: number;
  readonly testPieces: number;
  readonly rejectShare: number;
  readonly ownMaterials: readonly Material[];
  /** Fields of which the block gives a value: what is said is told apart from a default. */
  readonly given: readonly string[];
}
