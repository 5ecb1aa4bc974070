import { logGamma } from "./logGamma";

/** One life, or the area that a blade has reached without an end. */
export interface Life {
  readonly area: number;
  readonly ended: boolean;
}

/** A Weibull distribution fitted to lives. */
export interface WeibullFit {
  readonly shape: number;
  /** [unit of the lives] */
  readonly scale: number;
  readonly mean: number;
  readonly logLikelihood: number;
  /** Standard errors of ln scale, of ln(1/shape) and of ln mean, from the observed information [-]. */
  readonly scaleError: number;
  readonly shapeError: number;
  readonly meanError: number;
}

/** Slope of the log-likelihood over the shape, the scale being the best for it; falls where the shape rises. */
const slopeAt = (lives: readonly Life[], ended: readonly number[], shape: number): number => {
  let [sum, weighted] = [0, 0];
  for (const { area } of lives) {
    const power = area ** shape;
    sum += power;
    weighted += power * Math.log(area);
  }
  return 1 / shape + ended.reduce((s, area) => s + Math.log(area), 0) / ended.length - weighted / sum;
};

function bestShape(lives: readonly Life[], ended: readonly number[]): number {
  let [low, high] = [1e-3, 1];
  while (slopeAt(lives, ended, high) > 0) [low, high] = [high, high * 2];
  for (let i = 0; i < 100; i += 1) {
    const middle = (low + high) / 2;
    if (slopeAt(lives, ended, middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Errors of (ln scale, ln σ), σ = 1/shape, and of ln mean = ln scale + ln Γ(1 + σ), by the inverse of the observed information. */
function errorsOf(lives: readonly Life[], shape: number, scale: number) {
  let [aa, ab, bb] = [0, 0, 0];
  for (const { area, ended } of lives) {
    const z = shape * Math.log(area / scale);
    const power = Math.exp(z);
    aa += shape * shape * power;
    ab += shape * (z * power + power - (ended ? 1 : 0));
    bb += z * z * power + z * power - (ended ? z : 0);
  }
  const determinant = aa * bb - ab * ab;
  const [va, vb, cov] = [bb / determinant, aa / determinant, -ab / determinant];
  const [sigma, step] = [1 / shape, 1e-5];
  const slope = (logGamma(1 + sigma * (1 + step)) - logGamma(1 + sigma * (1 - step))) / (2 * step);
  return {
    scaleError: Math.sqrt(va),
    shapeError: Math.sqrt(vb),
    meanError: Math.sqrt(va + 2 * slope * cov + slope * slope * vb),
  };
}

/**
 * Weibull distribution of lives by maximum likelihood, blades without an end censored: the shape b solves
 * Σ aᵇ ln a/Σ aᵇ − 1/b = mean of ln a over the ended; scale = (Σ aᵇ/ended)^(1/b); mean = scale·Γ(1 + 1/b).
 * @param given lives, all above 0 [one unit of area]
 * @returns the fit [unit of the lives; shape and errors -]; undefined where none exists: no end, or every end at the largest area
 * @source standard (NIST/SEMATECH e-Handbook 8.4.1, maximum likelihood, quoted); information in (ln scale, ln σ) as R's survival package has it
 */
export function weibullFit(given: readonly Life[]): WeibullFit | undefined {
  const most = Math.max(...given.map((l) => l.area));
  const lives = given.map((l) => ({ ...l, area: l.area / most }));
  const ended = lives.filter((l) => l.ended).map((l) => l.area);
  if (ended.length === 0 || ended.every((area) => area > 1 - 1e-9)) return undefined;
  const shape = bestShape(lives, ended);
  const sum = lives.reduce((s, { area }) => s + area ** shape, 0);
  const scale = (sum / ended.length) ** (1 / shape);
  const logs = ended.reduce((s, area) => s + Math.log(area * most), 0);
  return {
    shape,
    scale: scale * most,
    mean: scale * most * Math.exp(logGamma(1 + 1 / shape)),
    logLikelihood:
      ended.length * (Math.log(shape) - shape * Math.log(scale * most)) + (shape - 1) * logs - sum / scale ** shape,
    ...errorsOf(lives, shape, scale),
  };
}
