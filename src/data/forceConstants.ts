/**
 * Force constants of the materials, kc = kc1.1 · h^−mc, from turning at chips of 0.1 to 1.6 mm: good to about ±40 % at the
 * chips of a saw. Columns: row, what it was measured on, kc1.1 [N/mm²], mc, source (key of materialSources).
 * The rows of source o come from machining cards under CC-BY-3.0 (J. Baehr), which quote the tables book named there: both
 * are credited where they are shown.
 * They are printed on the card only; limits use the constants of the cutting group.
 */
// prettier-ignore
const rows = [
  ["mild", "soft unalloyed low-carbon steel", 1800, 0.2, "o"],
  ["free", "free-cutting steel (9SMnPb28 class)", 1200, 0.18, "q"],
  ["e295", "E295 / St 50-2", 1990, 0.26, "p"],
  ["e335", "E335 / St 60-2", 2110, 0.17, "p"],
  ["c45", "C45E", 2220, 0.14, "q"],
  ["c60", "C60E", 2130, 0.18, "q"],
  ["low", "low-alloy steel", 2200, 0.24, "o"],
  ["42cr", "42CrMo4", 2500, 0.26, "p"],
  ["16mn", "16MnCr5", 2100, 0.26, "p"],
  ["51crv", "51CrV4", 2220, 0.26, "q"],
  ["tool", "unhardened cold-work tool steel", 2500, 0.27, "o"],
  ["aust", "austenitic stainless steel", 2000, 0.2, "o"],
  ["gs45", "cast steel GS-45", 1600, 0.17, "p"],
  ["mn", "austenitic manganese steel", 3300, 0.22, "p"],
  ["gjl", "grey iron", 1050, 0.23, "o"],
  ["gjl250", "grey iron GJL-250", 1160, 0.26, "p"],
  ["gjs", "ductile iron GJS-600", 1480, 0.17, "q"],
  ["gjm", "malleable iron", 1500, 0.28, "o"],
  ["alsoft", "soft wrought aluminium alloy", 470, 0.27, "o"],
  ["alhard", "high-silicon cast aluminium alloy, used for hard wrought alloys", 680, 0.27, "o"],
  ["alcast", "high-silicon cast aluminium alloy", 680, 0.27, "o"],
  ["brass", "brass", 780, 0.18, "q"],
  ["bronze", "gunmetal and tin bronze", 640, 0.25, "q"],
  ["mg", "magnesium alloy", 280, 0.19, "q"],
  ["feht", "iron-base heat-resistant alloy", 2500, 0.25, "r"],
  ["ni", "nickel-base alloy, annealed", 2700, 0.25, "r"],
  ["niaged", "nickel-base alloy, aged", 3000, 0.25, "r"],
  ["co", "cobalt-base alloy", 3000, 0.25, "r"],
  ["cpti", "commercially pure titanium", 1300, 0.23, "r"],
  ["ti", "titanium alloy", 1400, 0.23, "r"],
] as const;

export type ForceKey = (typeof rows)[number][0];

export interface ForceConstants {
  readonly measuredOn: string;
  readonly kc11: number;
  readonly mc: number;
  readonly source: string;
}

export const forceConstants: ReadonlyMap<string, ForceConstants> = new Map(
  rows.map(([key, measuredOn, kc11, mc, source]) => [key, { measuredOn, kc11, mc, source }]),
);
