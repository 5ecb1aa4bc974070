import { recordsConstants as k } from "../data/recordsConstants";
import { InputError } from "../errors";
import { logGamma } from "../statistics/logGamma";
import { sampleOf } from "../statistics/sampleOf";
import { weibullFit, type Life } from "../statistics/weibullFit";

/** The mean life that cost needs, and how well it is known. */
export interface LifeMean {
  readonly mean: number;
  /** Standard error / mean [-], with its degrees of freedom; undefined from one blade. */
  readonly error: { readonly relative: number; readonly df: number } | undefined;
  /** Standard deviation / mean of the lives [-]. */
  readonly spread: number | undefined;
  /** Some of the blades have not come to an end. */
  readonly censored: boolean;
}

const none = (problem: string, least: number): InputError =>
  new InputError("none", "", problem, { least: { number: least, quantity: "ownArea" } });

const weibullSpread = (shape: number): number =>
  Math.sqrt(Math.exp(logGamma(1 + 2 / shape) - 2 * logGamma(1 + 1 / shape)) - 1);

/**
 * Arithmetic mean life: of the blades themselves where all have ended; else of a Weibull distribution fitted by maximum
 * likelihood, the unended ones censored, with the standard error of ln mean.
 * @param lives one or more [area]
 * @returns mean [area], relative error [-] with degrees of freedom, spread [-]; an InputError "none" where only a lower end is known
 * @source cost per area = price / arithmetic mean life: renewal theorem; see weibullFit; t with ends − 1 degrees, simulated in docs/method.md
 */
export function lifeMean(lives: readonly Life[]): LifeMean | InputError {
  const ended = lives.filter((l) => l.ended).length;
  const all = lives.reduce((s, l) => s + l.area, 0);
  // The upper share of an exponential life, the shape that is most careful for blades that wear.
  const least = all / -Math.log(1 - k.upperShare.value);
  if (ended === 0) return none("no blade has come to its end yet: the mean life is at least {least}", least);
  if (ended === lives.length) {
    const { count, mean, variance } = sampleOf(lives.map((l) => l.area));
    const error = count === 1 ? undefined : { relative: Math.sqrt(variance / count) / mean, df: count - 1 };
    return { mean, error, spread: count === 1 ? undefined : Math.sqrt(variance) / mean, censored: false };
  }
  if (ended === 1)
    return none(
      "one blade has come to its end and others run on: the mean life is at least {least}",
      all / lives.length,
    );
  const fit = weibullFit(lives);
  if (fit === undefined)
    return none("all blades that came to their end cut the same area: more are needed", all / lives.length);
  const error = { relative: fit.meanError, df: ended - 1 };
  return { mean: fit.mean, error, spread: weibullSpread(fit.shape), censored: true };
}
