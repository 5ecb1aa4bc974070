import { recordsConstants as k } from "../data/recordsConstants";
import { bladeCost } from "../cost/bladeCost";
import { breakEvenAt } from "../cost/breakEvenAt";
import { InputError } from "../errors";
import type { Text } from "../phrase";
import { minutesPerHour } from "../quantities";
import { studentQuantile } from "../statistics/studentQuantile";
import type { Life } from "../statistics/weibullFit";
import type { Ending, Saving } from "./bladeRecord";
import { lifeMean, type LifeMean } from "./lifeMean";
import { livesOf } from "./livesOf";
import { longerOdds } from "./longerOdds";
import { oddsVerdict } from "./oddsVerdict";

/** A blade whose life is not typed but logged. */
export interface TriedBlade {
  readonly price: number;
  readonly rate: number;
}

interface BladeOddsInput {
  readonly current: TriedBlade;
  readonly offer: TriedBlade;
  readonly currentLives: readonly number[];
  readonly offerLives: readonly number[];
  readonly currentWhy: readonly Ending[] | undefined;
  readonly offerWhy: readonly Ending[] | undefined;
  readonly sawHourValue: number;
  readonly change: number;
}

const none = (problem: string, facts: Readonly<Record<string, string>> = {}): InputError =>
  new InputError("none", "", problem, facts);

/** So few blades say nothing, whatever their lives. */
function refuseFew({ currentLives: a, offerLives: b }: BladeOddsInput): void {
  if (a.length === 1 && b.length === 1)
    throw none("one blade each proves nothing below twice the life: here the offer cut {times} times the area", {
      times: String(Number((b[0]! / a[0]!).toPrecision(3))),
    });
  if (Math.min(a.length, b.length) < k.leastLives.value)
    throw none("{current} and {offer} blades: at least {least} of each are needed", {
      current: String(a.length),
      offer: String(b.length),
      least: String(k.leastLives.value),
    });
}

/** Saving per area with its 80 % band: the errors of both mean lives, by Welch's degrees of freedom. */
function savingOf(input: BladeOddsInput, a: LifeMean | InputError, b: LifeMean | InputError): Saving | InputError {
  if (a instanceof InputError || b instanceof InputError) return none("blades still running");
  const { current, offer, sawHourValue, change } = input;
  const cost = (blade: TriedBlade, { mean }: LifeMean): number =>
    bladeCost({ blade: { ...blade, life: mean }, sawHourValue, change });
  const wear = ({ price }: TriedBlade, { mean, error }: LifeMean): number =>
    ((price + (sawHourValue * change) / minutesPerHour) / mean) * error!.relative;
  const middle = cost(current, a) - cost(offer, b);
  const [ea, eb] = [wear(current, a) ** 2, wear(offer, b) ** 2];
  const error = Math.sqrt(ea + eb);
  if (error === 0) return { low: middle, middle, high: middle };
  const df = (ea + eb) ** 2 / (ea ** 2 / a.error!.df + eb ** 2 / b.error!.df);
  const off = studentQuantile(k.upperShare.value, df) * error;
  return { low: middle - off, middle, high: middle + off };
}

/** The life that the offer needs, over the mean life of the blade in use; or why no life is long enough. */
function neededRatio({ current, offer, sawHourValue, change }: BladeOddsInput, mean: number): number | InputError {
  const cost = bladeCost({ blade: { ...current, life: mean }, sawHourValue, change });
  const { life } = breakEvenAt({ offer: { ...offer, life: undefined }, sawHourValue, change, cost });
  return life instanceof InputError ? life : life / mean;
}

/**
 * How likely an offered blade costs less per area than the one in use, from the lives of some of each: the offer's lives are
 * divided by the ratio of lives at which both cost the same, then compared with those in use.
 * @param input price [money] and rate [area/min] of both; lives [area] and why they ended; sawHourValue [money/h]; change [min]
 * @returns likely [0 to 1]; savingLow, saving, savingHigh [money/area]; bladesMore of each [-]; verdict [text]
 * @throws InputError "none": fewer than three lives of a blade, or none in use has ended
 * @source see longerOdds; cost per area and its break-even life: bladeCost, breakEvenAt
 */
export function bladeOdds(input: BladeOddsInput) {
  refuseFew(input);
  const lives: readonly [readonly Life[], readonly Life[]] = [
    livesOf(input.currentLives, input.currentWhy, "cost"),
    livesOf(input.offerLives, input.offerWhy, "cost"),
  ];
  const means = [lifeMean(lives[0]), lifeMean(lives[1])] as const;
  if (means[0] instanceof InputError)
    throw none("too few blades in use have come to their end: their mean life is not known");
  const ratio = neededRatio(input, means[0].mean);
  const odds = ratio instanceof InputError ? { likely: 0, bladesMore: ratio } : longerOdds(lives[0], lives[1], ratio);
  const saving = savingOf(input, ...means);
  const isKnown = !(saving instanceof InputError);
  return {
    likely: odds.likely,
    savingLow: isKnown ? saving.low : saving,
    saving: isKnown ? saving.middle : saving,
    savingHigh: isKnown ? saving.high : saving,
    bladesMore: odds.bladesMore,
    verdict: oddsVerdict({
      ...odds,
      never: ratio instanceof InputError,
      saving,
      blades: [lives[0].length, lives[1].length],
      sawHourValue: input.sawHourValue,
    }) as Text,
  };
}
