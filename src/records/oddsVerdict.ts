import { recordsConstants as k } from "../data/recordsConstants";
import { InputError } from "../errors";
import type { Phrase } from "../phrase";
import type { Saving } from "./bladeRecord";
import type { Odds } from "./longerOdds";

interface Judged extends Odds {
  readonly never: boolean;
  readonly saving: Saving | InputError;
  readonly blades: readonly [current: number, offer: number];
  readonly sawHourValue: number;
}

const digits = (n: number): string => String(Number(n.toPrecision(2)));
const digits5 = (n: number): string => String(Number(n.toPrecision(5)));
const inHundred = (likely: number): string => {
  if (likely > k.sureShare.value) return "more than 99 in 100";
  if (likely < 1 - k.sureShare.value) return "less than 1 in 100";
  return `${Math.round(likely * 100)} in 100`;
};

/** From a loss to a saving, in words where the ends differ in sign. */
function savingWords(saving: Saving | InputError): string {
  if (saving instanceof InputError) return "";
  const { low, high } = saving;
  if (low >= 0) return `; saving ${digits(low)} to ${digits(high)} per unit of area`;
  if (high <= 0) return `; loss ${digits(-high)} to ${digits(-low)} per unit of area`;
  return `; from a loss of ${digits(-low)} to a saving of ${digits(high)} per unit of area`;
}

/** What would settle it. */
function moreWords({ likely, bladesMore }: Judged): string {
  if (likely < 1 - k.settled.value) return "; keep the blade in use";
  if (bladesMore instanceof InputError) return likely >= k.settled.value ? "; blades still run" : "; not settled yet";
  if (bladesMore === 0) return "; that settles it";
  return `; ${bladesMore} more ${bladesMore === 1 ? "blade" : "blades"} of each would settle it if lives go on so`;
}

/**
 * A comparison of blades in a sentence to send.
 * @param judged likely [0 to 1]; bladesMore; saving [money/area]; blades of each [-]; sawHourValue [money/h]
 * @returns the verdict [text]
 * @source what settles it, 90 in 100: judgement, data/recordsConstants
 */
export function oddsVerdict(judged: Judged): Phrase {
  const { likely, never, saving, blades, sawHourValue } = judged;
  const [a, b] = blades;
  const facts = { hour: digits5(sawHourValue) };
  if (never)
    return {
      template: "The offer cannot be cheaper at a saw hour worth {hour}, however long it lasts; keep the blade in use.",
      facts,
    };
  const from = a === b ? `${a} blades each` : `${a} blades in use and ${b} of the offer`;
  return {
    template: `From ${from}: ${inHundred(likely)} that the offer is cheaper at a saw hour worth {hour}${savingWords(saving)}${moreWords(judged)}.`,
    facts,
  };
}
