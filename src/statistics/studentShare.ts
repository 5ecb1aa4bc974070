import { logGamma } from "./logGamma";

const tiny = 1e-300;
const away = (x: number): number => (Math.abs(x) < tiny ? tiny : x);

/** The continued fraction of the incomplete beta function, by Lentz's method. */
function betaFraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / away(1 - ((a + b) * x) / (a + 1));
  let h = d;
  for (let m = 1; m < 500; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / away(1 + even * d);
    c = away(1 + even / c);
    h *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / away(1 + odd * d);
    c = away(1 + odd / c);
    h *= d * c;
    if (Math.abs(d * c - 1) < 1e-15) break;
  }
  return h;
}

/** Regularised incomplete beta function I(x; a, b). */
function betaShare(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(1 - x));
  return x < (a + 1) / (a + b + 2) ? (front * betaFraction(x, a, b)) / a : 1 - (front * betaFraction(1 - x, b, a)) / b;
}

/**
 * Share of Student's t distribution below t: 1 − I(df/(df + t²); df/2, 1/2)/2 for t above 0.
 * @param t a value of the distribution [-]
 * @param df degrees of freedom, 1 or more, whole or not [-]
 * @returns share, 0 to 1 [-]
 * @source standard; the continued fraction as in Press et al., Numerical Recipes (from memory)
 */
export function studentShare(t: number, df: number): number {
  const tail = betaShare(df / (df + t * t), df / 2, 0.5) / 2;
  return t > 0 ? 1 - tail : tail;
}
