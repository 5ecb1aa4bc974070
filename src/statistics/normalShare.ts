/** Coefficients of the fit, from the constant up. */
const fit = [
  -1.26551223, 1.00002368, 0.37409196, 0.09678418, -0.18628806, 0.27886807, -1.13520398, 1.48851587, -0.82215223,
  0.17087277,
];

/**
 * Share of a standard normal distribution below x, Φ(x), with an error below 1.2e-7 of the smaller side.
 * @param x standard deviations from the mean [-]
 * @returns Φ [-]
 * @source Chebyshev fit of the complementary error function, Numerical Recipes, ch. 6.2 (from memory)
 */
export function normalShare(x: number): number {
  const z = Math.abs(x) / Math.SQRT2;
  const t = 1 / (1 + 0.5 * z);
  const exponent = fit.reduceRight((sum, c) => sum * t + c, 0);
  const tail = (t * Math.exp(exponent - z * z)) / 2;
  return x >= 0 ? 1 - tail : tail;
}
