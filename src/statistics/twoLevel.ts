/** What is assumed before the first value: standard deviations of the shop, of its groups and of a value, and what the last is worth. */
export interface Assumed {
  readonly shop: number;
  readonly group: number;
  readonly value: number;
  /** Values that the assumed scatter is worth [-]. */
  readonly worth: number;
}

/** What is known of a group after its values. */
export interface GroupLevel {
  readonly middle: number;
  /** Variance of the middle. */
  readonly variance: number;
}

export interface TwoLevels {
  /** Middle of the shop. */
  readonly shop: number;
  readonly groups: readonly GroupLevel[];
  /** Scatter of a value about its group's middle, squared, and its degrees of freedom. */
  readonly scatter2: number;
  readonly df: number;
}

const meanOf = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;

/**
 * Two-level normal model: shop μ ~ N(0, shop²), group θ ~ N(μ, group²), value ~ N(θ, σ²). ν = worth + N − J;
 * σ² = (worth·value² + Σ (y − ȳ)²)/ν; w = 1/(group² + σ²/n); P = 1/shop² + Σ w; M = Σ w·ȳ/P; B = group²·w;
 * θ = (1 − B)·M + B·ȳ; variance = group²·(1 − B) + (1 − B)²/P.
 * @param groups values of each group, none of them empty [-]
 * @param assumed standard deviations [-]
 * @returns middle M of the shop; middle and variance of each group; σ² and ν [-]
 * @source Gelman et al., Bayesian Data Analysis, ch. 5 (from memory)
 */
export function twoLevel(groups: readonly (readonly number[])[], assumed: Assumed): TwoLevels {
  const between = assumed.group ** 2;
  const means = groups.map(meanOf);
  const squares = groups.reduce((s, values, j) => s + values.reduce((t, y) => t + (y - means[j]!) ** 2, 0), 0);
  const df = assumed.worth + groups.reduce((n, values) => n + values.length, 0) - groups.length;
  const scatter2 = (assumed.worth * assumed.value ** 2 + squares) / df;
  const weights = groups.map((values) => 1 / (between + scatter2 / values.length));
  const precision = 1 / assumed.shop ** 2 + weights.reduce((a, b) => a + b, 0);
  const shop = weights.reduce((s, w, j) => s + w * means[j]!, 0) / precision;
  return {
    shop,
    groups: weights.map((w, j) => {
      const own = between * w;
      return {
        middle: (1 - own) * shop + own * means[j]!,
        variance: between * (1 - own) + (1 - own) ** 2 / precision,
      };
    }),
    scatter2,
    df,
  };
}
