import type { Sample } from "./sampleOf";

/** The difference of two means, and how well it is known. */
export interface Difference {
  readonly difference: number;
  readonly error: number;
  readonly df: number;
}

/**
 * Difference of two means without assuming equal scatter: error² = s₁²/n₁ + s₂²/n₂, df = error⁴ / Σ (s²/n)²/(n − 1).
 * @param first sample of two values or more [any unit]
 * @param second sample of two values or more [same unit]
 * @returns mean of the second less mean of the first, its standard error [same unit], degrees of freedom [-]
 * @source Welch 1947, Satterthwaite 1946 (from memory)
 */
export function welch(first: Sample, second: Sample): Difference {
  const [a, b] = [first.variance / first.count, second.variance / second.count];
  return {
    difference: second.mean - first.mean,
    error: Math.sqrt(a + b),
    df: (a + b) ** 2 / (a ** 2 / (first.count - 1) + b ** 2 / (second.count - 1)),
  };
}
