import { constant, type Constant } from "./constant";

/** Constants of blade economics. */
// prettier-ignore
export const costConstants = {
  roundOff: constant(1e-12, "-", "derived", "what the computer's numbers may add to a whole number"),
  tie: constant(1e-9, "-", "derived", "costs so close are equal: what rounding may bring"),
  percent: constant(100, "%", "derived", "a share as people say it"),
  changeFrom: constant(-0.3, "-", "judgement", "least change of a claim that is looked at"),
  changeStep: constant(0.1, "-", "judgement", "step of the changes"),
  changeCount: constant(6, "-", "judgement", "changes: -30 to +20 %"),
  lifeScatter: constant(0.3, "-", "read", "coefficient of variation of tool life: Wager and Barash, J. Eng. Industry 93(4), 1971 (abstract)"),
  trialledShare: constant(0.3, "-", "judgement", "rates beyond this share of the trial rate are extrapolated"),
  usualTrialRatio: constant(1.2, "-", "judgement", "two trials 20 % apart, the example of how uncertain an exponent is"),
  leastExponent: constant(0.001, "-", "judgement", "an exponent below this is none: life does not fall with the rate"),
  nearLeastCost: constant(1.01, "-", "judgement", "within 1 % of the least cost"),
} as const satisfies Record<string, Constant>;
