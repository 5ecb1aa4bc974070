import { recordsConstants as k } from "../data/recordsConstants";
import { InputError } from "../errors";
import { studentQuantile } from "../statistics/studentQuantile";
import { weibullFit } from "../statistics/weibullFit";
import type { Ending } from "./bladeRecord";
import { lifeMean, type LifeMean } from "./lifeMean";
import { livesOf } from "./livesOf";

interface BladeLifeInput {
  readonly areaCut: readonly number[];
  readonly why: readonly Ending[] | undefined;
}

const none = (problem: string, facts: Readonly<Record<string, string>> = {}): InputError =>
  new InputError("none", "", problem, facts);
const oneBlade = (): InputError => none("one blade: how far lives differ is not known");

/** The band that the mean lies in with 80 %: mean ± t·error; in logarithms where blades are censored. */
function bandOf({ mean, error, censored }: LifeMean): {
  readonly low: number | InputError;
  readonly high: number | InputError;
} {
  if (error === undefined) return { low: oneBlade(), high: oneBlade() };
  const off = studentQuantile(k.upperShare.value, error.df) * error.relative;
  if (censored) return { low: mean * Math.exp(-off), high: mean * Math.exp(off) };
  return { low: off < 1 ? mean * (1 - off) : none("too few blades for a lower end"), high: mean * (1 + off) };
}

/** Blades more until the mean is known to ±10 %, lives scattering as they do. */
function bladesMore({ spread }: LifeMean, ended: number): number | InputError {
  if (spread === undefined) return oneBlade();
  const isKnown = (n: number): boolean =>
    (studentQuantile(k.upperShare.value, n - 1) * spread) / Math.sqrt(n) <= k.wantedShare.value;
  for (let more = 0; more <= k.mostBlades.value; more += 1) if (ended + more > 1 && isKnown(ended + more)) return more;
  return none("more than {most} blades", { most: String(k.mostBlades.value) });
}

/** Shape of the wear alone: breakages are areas reached without wearing out. */
function wearShape({ areaCut, why }: BladeLifeInput): number | InputError {
  const lives = livesOf(areaCut, why, "wear");
  const worn = lives.filter((l) => l.ended).length;
  if (worn < k.shapeFrom.value)
    return none("{worn} worn: the shape is given from {from} worn blades up", {
      worn: String(worn),
      from: String(k.shapeFrom.value),
    });
  return weibullFit(lives)?.shape ?? none("all worn blades cut the same area");
}

/**
 * Blade life from a log of blades: the arithmetic mean, which cost per area needs, its 80 % band by Student's t, the spread
 * of lives, the Weibull shape of the wear from five worn blades up, and how many blades more make the mean known to ±10 %.
 * @param input areaCut [area] of each blade; why each came off, all worn where it is not given
 * @returns mean, low, high [area]; spread, shape, blades, bladesMore [-]; each an InputError "none" with the reason where it cannot be given
 * @source renewal theorem; maximum likelihood with censoring: see weibullFit; measured small-sample behaviour: docs/method.md
 */
export function bladeLife(input: BladeLifeInput) {
  const lives = livesOf(input.areaCut, input.why, "cost");
  const blades = lives.filter((l) => l.ended).length;
  const known = lifeMean(lives);
  const shape = wearShape(input);
  if (known instanceof InputError) {
    const least = known.facts["least"];
    const low = typeof least === "object" ? least.number : known;
    return { mean: known, low, high: known, spread: known, shape, blades, bladesMore: known };
  }
  return {
    mean: known.mean,
    ...bandOf(known),
    spread: known.spread ?? oneBlade(),
    shape,
    blades,
    bladesMore: bladesMore(known, blades),
  };
}
