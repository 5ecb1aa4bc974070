/** Lanczos' series for g = 7 with nine terms, as P. Godfrey printed it. */
// prettier-ignore
const terms = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
] as const;

/**
 * Natural logarithm of the gamma function, by Lanczos' series: right to about 14 digits.
 * @param x more than 0.5 [-]
 * @returns ln Γ(x) [-]
 * @source Lanczos 1964 with Godfrey's coefficients (from memory)
 */
export function logGamma(x: number): number {
  const z = x - 1;
  const base = z + 7.5;
  const sum = terms.reduce((s, term, i) => (i === 0 ? term : s + term / (z + i)), 0);
  return 0.5 * Math.log(2 * Math.PI) + (z + 0.5) * Math.log(base) - base + Math.log(sum);
}
