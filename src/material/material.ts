import type { ForceConstants } from "../data/forceConstants";
import type { Basis, Group } from "../data/groups";

export type DesignationKind =
  "name" | "UNS" | "AISI, SAE or ASTM" | "W.-Nr." | "EN number" | "EN name" | "JIS" | "also called" | "trade name";

export interface Designation {
  readonly kind: DesignationKind;
  readonly text: string;
  /** Names a grade that is near this one, not the same. */
  readonly near: boolean;
}

/** A material in one condition. Conditions of one steel share `grade`; exactly one of them is its default. */
export interface Material {
  readonly key: string;
  readonly grade: string;
  readonly isDefault: boolean;
  /** 1 everyday stock, best checked; 2 less checked. */
  readonly tier: 1 | 2;
  readonly name: string;
  readonly family: string;
  readonly condition: string;
  /** Condition words that this row answers to. */
  readonly answersTo: readonly string[];
  /** ISO 513 letter by the standard; the group's letter is the one shops use. */
  readonly letter: string;
  /** Cutting group; undefined where there is no cutting data. */
  readonly group: Group | undefined;
  /** Band speed of bi-metal in this grade at a mean width of 4 in [mm/min]; undefined: the group's. */
  readonly bandSpeed: { readonly value: number; readonly basis: Basis } | undefined;
  /** Factor of this grade on the group's bite [-]; undefined: 1. */
  readonly biteFactor: { readonly value: number; readonly basis: Basis } | undefined;
  /** [kg/mm³] */
  readonly density: number;
  /** [HB] */
  readonly hardness: { readonly least: number; readonly most: number };
  /** Typical [N/mm²]. */
  readonly tensile: number;
  /** [%] on the basis named; two bases are never compared. */
  readonly machinability: { readonly percent: number; readonly basis: string } | undefined;
  /** Force constants of the material itself [N/mm²], [-]; limits use the group's. */
  readonly force: ForceConstants | undefined;
  /** Keys of hazardTexts. */
  readonly hazards: readonly string[];
  readonly designations: readonly Designation[];
  /** Found as typed, never shown. */
  readonly tradeNames: readonly Designation[];
  /** Keys of materialSources for designation, density, mechanical values, machinability; see data/materials. */
  readonly sources: string;
  /** Marks of hardness, tensile strength, force constants; see data/materials. */
  readonly marks: string;
  /** True for a material of the shop block, which may state the next two. */
  readonly own?: boolean;
  /** Rate of this material against the prediction [-]. */
  readonly rateFactor?: number;
  /** Price per mass [money/kg]. */
  readonly price?: number;
}
