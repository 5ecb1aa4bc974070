import { recordsConstants as k } from "../data/recordsConstants";
import { InputError } from "../errors";
import { logRankScores } from "../statistics/logRankScores";
import { sampleOf, type Sample } from "../statistics/sampleOf";
import { splitShare } from "../statistics/splitShare";
import { studentShare } from "../statistics/studentShare";
import type { Life } from "../statistics/weibullFit";
import { welch } from "../statistics/welch";

export interface Odds {
  /** 0 to 1 */
  readonly likely: number;
  /** Of each, until it is 90 in 100. */
  readonly bladesMore: number | InputError;
}

const none = (problem: string): InputError => new InputError("none", "", problem);

const shareOf = (first: Sample, second: Sample): number => {
  const { difference, error, df } = welch(first, second);
  return error === 0 ? (1 + Math.sign(difference)) / 2 : studentShare(difference / error, df);
};

/** Blades more of each, lives going on to scatter about the means that were seen. */
function moreNeeded(first: Sample, second: Sample): number | InputError {
  if (second.mean <= first.mean) return none("on these lives the blade in use is the cheaper one");
  for (let more = 0; more <= k.mostBlades.value; more += 1) {
    const grown = (s: Sample): Sample => ({ ...s, count: s.count + more });
    if (shareOf(grown(first), grown(second)) >= k.settled.value) return more;
  }
  return none("more than a thousand blades of each");
}

/**
 * How likely lives are longer than `ratio` times other lives. Where all have ended: Student's t of the difference of mean
 * logarithms (Welch). Where some have not: the share of all splits of the pooled lives, the second ones divided by the
 * ratio, whose log-rank sum speaks less for the second (permutation test, mid p-value).
 * @param first lives to compare with [area]
 * @param second lives of which it is asked [area]
 * @param ratio above 0 [-]
 * @returns likely [0 to 1]; bladesMore [-], an InputError "none" where it cannot be given
 * @source small-sample behaviour measured: the log-rank's own chi-square and the Weibull likelihood claim too much below 6 blades each; docs/method.md
 */
export function longerOdds(first: readonly Life[], second: readonly Life[], ratio: number): Odds {
  const reduced = second.map((l) => ({ ...l, area: l.area / ratio }));
  if ([...first, ...second].every((l) => l.ended)) {
    const [a, b] = [first, reduced].map((lives) => sampleOf(lives.map((l) => Math.log(l.area)))) as [Sample, Sample];
    return { likely: shareOf(a, b), bladesMore: moreNeeded(a, b) };
  }
  const scores = logRankScores([...first, ...reduced]);
  return {
    likely: splitShare(scores.slice(0, first.length), scores.slice(first.length), k.mostSplits.value),
    bladesMore: none("blades still running"),
  };
}
