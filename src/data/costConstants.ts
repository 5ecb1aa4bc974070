import { constant, type Constant } from "./constant";

/** Constants of blade economics. */
// prettier-ignore
export const costConstants = {
  lifeScatter: constant(0.3, "-", "read", "coefficient of variation of tool life: Wager and Barash, J. Eng. Industry 93(4), 1971 (abstract)"),
  trialledShare: constant(0.3, "-", "judgement", "rates beyond this share of the trial rate are extrapolated"),
  usualTrialRatio: constant(1.2, "-", "judgement", "two trials 20 % apart, the example of how uncertain an exponent is"),
  leastExponent: constant(0.001, "-", "judgement", "an exponent below this is none: life does not fall with the rate"),
  nearLeastCost: constant(1.01, "-", "judgement", "within 1 % of the least cost"),
} as const satisfies Record<string, Constant>;
