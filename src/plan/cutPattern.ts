import type { CutProblem } from "./cutProblem";

/** What is cut from one bar. */
export interface Pattern {
  /** Place of the stock. */
  readonly stock: number;
  /** Place of the length, and pieces of it; by place. */
  readonly cuts: readonly (readonly [length: number, pieces: number])[];
  /** Pieces with their kerf [nm]. */
  readonly filled: number;
  /** Left of the bar, its grip included [nm]. */
  readonly left: number;
  readonly cost: number;
  /** Names it. */
  readonly key: string;
}

/** Patterns, and how often each is cut. */
export type Plan = readonly (readonly [pattern: Pattern, times: number])[];

/**
 * A pattern from its cuts: filled = Σ pieces·(length + kerf), left = max(0, room − filled).
 * @param problem the order
 * @param stock place of its stock
 * @param cuts pieces of each length, in any order
 * @returns the pattern; filled and left [nm]
 * @source geometry
 */
export function cutPattern(problem: CutProblem, stock: number, cuts: Pattern["cuts"]): Pattern {
  const sorted = cuts.filter(([, pieces]) => pieces > 0).sort((a, b) => a[0] - b[0]);
  const filled = sorted.reduce((sum, [i, pieces]) => sum + pieces * problem.widths[i]!, 0);
  const { room, cost } = problem.stocks[stock]!;
  return { stock, cuts: sorted, filled, left: Math.max(0, room - filled), cost, key: `${stock}:${sorted.join(",")}` };
}
