import { costConstants as k } from "../data/costConstants";
import { InputError } from "../errors";
import type { Phrase, Text } from "../phrase";
import { minutesPerHour } from "../quantities";
import type { Blade } from "./blade";

interface BestRateInput {
  readonly blade: Blade;
  readonly exponent: number;
  readonly sawHourValue: number;
  readonly change: number;
}

/** Solves (m/x + x^m)/(m + 1) = 1.01 for x, the rate against the best, between an x that costs more and the best, 1. */
function onePercent(m: number, dearer: number): number {
  let [out, within] = [dearer, 1];
  for (let i = 0; i < 100; i += 1) {
    const x = (out + within) / 2;
    if ((m / x + x ** m) / (m + 1) > k.nearLeastCost.value) out = x;
    else within = x;
  }
  return within;
}

/** Standard error of an exponent from two trials, rates this ratio apart. */
const exponentNoise = (ratio: number): string =>
  String(Number(((Math.SQRT2 * k.lifeScatter.value) / Math.log(ratio)).toPrecision(2)));

const noiseOf: Phrase = {
  template: "An exponent from one blade each at two rates 20 % apart is uncertain by {noise}, either way.",
  facts: { noise: exponentNoise(k.usualTrialRatio.value) },
};

function extrapolation(best: number | InputError, trial: number): Text {
  if (best instanceof InputError) return noiseOf;
  const template =
    Math.abs(best / trial - 1) <= k.trialledShare.value
      ? "Least cost lies within 30 % of the trial rate."
      : "Extrapolated: least cost lies at {ratio} times the trial rate; try a rate between before you trust it.";
  return [{ template, facts: { ratio: String(Number((best / trial).toPrecision(2))) } }, noiseOf];
}

/** Rate at which changing minutes·m/life(rate) balances the cutting, rate = trial·(life/(m·trial·minutes))^(1/(m+1)). */
const balanced = ({ blade: { life, rate }, exponent: m }: BestRateInput, minutes: number): number =>
  rate * (life / (m * rate * minutes)) ** (1 / (m + 1));

/**
 * The rate at which a blade cuts cheapest when life in area falls with the rate, life·(rate/trial rate)^−m, m = 1/n − 1 for
 * Taylor's n: with minutes = change + 60·price/w, rate = trial·(life/(m·trial·minutes))^(1/(m+1)); greatest output is the
 * same without the price. Cost against the least at x times that rate: (m/x + x^m)/(m + 1).
 * @param input blade price [money], life [area] at its trial rate [area/min]; exponent m [-]; sawHourValue w [money/h]; change [min]
 * @returns leastCost, greatestOutput, slowest and fastest within 1 % of the least cost [area/min]; extrapolates [text]
 * @throws InputError "none": life does not fall with the rate, so no rate is best
 * @source Gilbert 1950 (from memory), Taylor's v·T^n = C at constant feed per tooth; scatter of life 0.3: Wager and Barash, J. Eng. Industry 93(4), 1971 (abstract read)
 */
export function bestRate(input: BestRateInput): {
  readonly leastCost: number | InputError;
  readonly greatestOutput: number | InputError;
  readonly slowest: number | InputError;
  readonly fastest: number | InputError;
  readonly extrapolates: Text;
} {
  const { blade, exponent: m, sawHourValue: w, change } = input;
  if (m < k.leastExponent.value)
    throw new InputError(
      "none",
      "exponent",
      "{parameter} must be at least 0.001: these trials do not show life falling with the rate, so no rate is best; run as fast as saw and finish allow",
    );
  const leastCost =
    w > 0
      ? balanced(input, change + (minutesPerHour * blade.price) / w)
      : new InputError("none", "", "while a saw hour is worth nothing, every slower rate is cheaper");
  const greatestOutput =
    change > 0
      ? balanced(input, change)
      : new InputError("none", "", "while a blade change takes no time, every faster rate gives more");
  const times = (x: () => number): number | InputError =>
    leastCost instanceof InputError ? leastCost : leastCost * x();
  return {
    leastCost,
    greatestOutput,
    slowest: times(() => onePercent(m, m / (k.nearLeastCost.value * (m + 1)))),
    fastest: times(() => onePercent(m, (k.nearLeastCost.value * (m + 1)) ** (1 / m))),
    extrapolates: extrapolation(leastCost, blade.rate),
  };
}
