import { recordsConstants as k } from "../data/recordsConstants";
import type { Phrase } from "../phrase";

const tooFast: Phrase = { template: "faster than this saw as described", facts: {} };
const slipped: Phrase = {
  template: "minutes typed as seconds or hours, or mm read as inches? Its factor would be {factor}",
  facts: {},
};
const slip = (factor: number): Phrase => ({
  ...slipped,
  facts: { factor: String(Number(factor.toPrecision(2))) },
});

/**
 * The place where a rising function is 0, or jumps over it, between two places of different sign: false position, the Illinois
 * way. Beside a level stretch that creeps; the second half of the steps halves what is left and so always arrives.
 */
function zeroOf(miss: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  let [below, above] = [miss(low), miss(high)];
  let x = low;
  let side = 0;
  for (let i = 0; i < k.searchSteps.value; i += 1) {
    x = i < k.searchSteps.value / 2 ? low + ((high - low) * below) / (below - above) : (low + high) / 2;
    const value = miss(x);
    if (Math.abs(value) < k.searchSlack.value) return x;
    if (value < 0) {
      [low, below] = [x, value];
      if (side < 0) above /= 2;
      side = -1;
    } else {
      [high, above] = [x, value];
      if (side > 0) below /= 2;
      side = 1;
    }
  }
  return x;
}

/**
 * The factor on the bite at which the model gives the minutes logged: the rate never falls as the factor rises.
 * @param minutesAt minutes of the model at a factor [min]
 * @param logged minutes [min]
 * @returns the factor [-], or the reason why none is taken [text]
 * @source definition; limits of the search: judgement, data/recordsConstants
 */
export function solveFactor(minutesAt: (factor: number) => number, logged: number): number | Phrase {
  const miss = (x: number): number => Math.log(logged / minutesAt(Math.exp(x)));
  const first = miss(0);
  // Where nothing binds the rate is in proportion to the bite, and this is the answer.
  const guess = -first;
  const most = Math.log(k.mostFactor.value);
  if (Math.abs(guess) <= most && Math.abs(miss(guess)) < k.searchSlack.value) return Math.exp(guess);
  if (miss(most) < 0) return miss(Math.log(k.searchTo.value)) < 0 ? tooFast : slip(Math.exp(Math.max(guess, most)));
  if (miss(-most) > 0) return slip(Math.exp(Math.min(guess, -most)));
  return Math.exp(zeroOf(miss, -most, most));
}
