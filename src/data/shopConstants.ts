import { constant, type Constant } from "./constant";

/** What holds for a saw of which nothing is said, and the ranges that a shop's own numbers are held to. */
// prettier-ignore
export const shopConstants = {
  driveEfficiency: constant(0.75, "-", "common practice", "share of the motor's power that reaches the band"),
  guideGap: constant(75, "mm", "common practice", "work to guides, both sides together"),
  bandTension: constant(250, "MPa", "common practice", "tensile stress in the band"),
  breakInFeedShare: constant(0.5, "-", "common practice", "feed of a new blade against the usual one"),
  rateFactorFrom: constant(0.05, "-", "judgement", "beyond this the like grade, or the log, is the wrong one"),
  rateFactorTo: constant(20, "-", "judgement", "beyond this the like grade, or the log, is the wrong one"),
  rateSpreadFrom: constant(1, "-", "derived", "low and high at the rate itself"),
  densityFrom: constant(1000e-9, "kg/mm³", "judgement", "magnesium-lithium; no metal's number in the block's other units is in range"),
  densityTo: constant(23_000e-9, "kg/mm³", "judgement", "tungsten and the platinum metals"),
  bandWidthFrom: constant(5, "mm", "judgement", "narrowest usual band"),
  bandWidthTo: constant(150, "mm", "judgement", "widest usual band"),
  bandThicknessFrom: constant(0.3, "mm", "judgement", "thinnest usual band"),
  bandThicknessTo: constant(3, "mm", "judgement", "thickest usual band"),
  bandTensionFrom: constant(50, "MPa", "judgement", "slackest band that still cuts"),
  bandTensionTo: constant(700, "MPa", "judgement", "no strip steel is strained more"),
  wheelFrom: constant(100, "mm", "judgement", "smallest usual band wheel"),
  wheelTo: constant(3000, "mm", "judgement", "largest usual band wheel"),
  kerfFrom: constant(0.3, "mm", "judgement", "thinnest usual band"),
  kerfTo: constant(8, "mm", "judgement", "widest usual band"),
  longestBandFeet: constant(60, "ft", "common practice", "longer than any usual band: a bare number above it is in inches or millimetres"),
  marginTo: constant(0.99, "-", "judgement", "a margin or a rebate of the whole price leaves no price"),
  rejectTo: constant(0.5, "-", "judgement", "more than half scrapped is no running job"),
  longestName: constant(60, "characters", "judgement", "name of an own material"),
} as const satisfies Record<string, Constant>;
