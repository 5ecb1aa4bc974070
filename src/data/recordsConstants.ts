import { constant, type Constant } from "./constant";

/** Constants of tuning and of blade records. */
// prettier-ignore
export const recordsConstants = {
  betweenShops: constant(0.22, "-", "judgement", "standard deviation of ln of the rate factor from shop to shop; with the next two an untuned band of ×/÷ 1.6"),
  betweenGroups: constant(0.265, "-", "judgement", "the same from group to group within a shop"),
  betweenCuts: constant(0.12, "-", "judgement", "the same from cut to cut within a group"),
  scatterWorth: constant(4, "cuts", "judgement", "cuts that the assumed scatter from cut to cut is worth"),
  upperShare: constant(0.9, "-", "derived", "upper end of a band that 80 % fall inside"),
  mostFactor: constant(8, "-", "judgement", "a factor above this or below its inverse is a slip of units: the least one, minutes for hours, is 60, millimetres for inches 645"),
  searchTo: constant(1000, "-", "judgement", "minutes that even this factor does not reach are beyond the saw as described"),
  searchSteps: constant(60, "-", "judgement", "most steps of the search for a factor"),
  searchSlack: constant(1e-6, "-", "judgement", "ln of the rate at which the search ends"),
  slopeStep: constant(0.05, "-", "judgement", "step of ln of the factor at which the movement of the rate is taken"),
  heldSlope: constant(0.5, "-", "judgement", "a cut whose rate moves by less than this share of the factor's movement is held by something else"),
  outlierTimes: constant(3.5, "-", "common practice", "scaled median absolute deviations from the median beyond which a value is an outlier"),
  deviationScale: constant(1.4826, "-", "derived", "median absolute deviation to standard deviation of a normal distribution"),
  leastDeviation: constant(0.05, "-", "judgement", "median absolute deviation of ln of the factor, at least"),
  ownGroupFrom: constant(4, "cuts", "judgement", "with fewer of its own a group's cuts are compared with all of the log"),
  namedRows: constant(4, "rows", "judgement", "rows that a comment names before it counts the rest"),
  shapeFrom: constant(5, "blades", "derived", "worn blades from which the shape of the wear is given: with 5 it is 1.43 times too high on average, simulated"),
  wantedShare: constant(0.1, "-", "judgement", "half width of the mean life's band that blades more leads to"),
  mostBlades: constant(1000, "blades", "judgement", "blades more beyond which none are promised"),
  leastLives: constant(3, "blades", "derived", "blades of a side below which two are not compared: with 2 of each even the clearest split is one of six"),
  mostSplits: constant(50_000, "splits", "judgement", "ways to split two lists of lives that are gone through"),
  settled: constant(0.9, "-", "judgement", "likelihood that settles a comparison of blades"),
  sureShare: constant(0.995, "-", "judgement", "beyond it a likelihood is said as more than 99 in 100"),
} as const satisfies Record<string, Constant>;
