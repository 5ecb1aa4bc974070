import { bestPlan, type BestPlan } from "../../src/plan/bestPlan";
import { cutProblem, type CutPlanInput, type CutProblem } from "../../src/plan/cutProblem";

export const order = (
  pieces: readonly (readonly [length: number, quantity: number])[],
  stocks: readonly (readonly [length: number, quantity?: number | null, cost?: number | null])[],
  more: Partial<Pick<CutPlanInput, "kerf" | "trim" | "grip" | "usefulRemnant">> = {},
): CutPlanInput => ({
  lengths: pieces.map(([length]) => length),
  quantities: pieces.map(([, quantity]) => quantity),
  stocks: stocks.map(([length]) => length),
  stockQuantities: stocks.map(([, quantity]) => quantity ?? undefined),
  stockCosts: stocks.map(([, , cost]) => cost ?? undefined),
  kerf: 0,
  trim: 0,
  grip: 0,
  usefulRemnant: 0,
  ...more,
});

/** A generator of the tests' own. */
export const random = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (Math.imul(state ^ (state >>> 15), 2246822519) + 374761393) | 0;
    return ((state >>> 8) & 0xffffff) / 0x1000000;
  };
};

/** Half jobbing, half series, as lengths come in a shop (invented). */
export function randomOrder(next: () => number, lines: number, stocks: readonly number[]): CutPlanInput {
  const isJobbing = next() < 0.5;
  const pieces = Array.from({ length: lines }, () => {
    const [length, kind] = [60 + next() * 2540, next()];
    const rounded =
      kind < 0.4 ? Math.round(length / 5) * 5 : kind < 0.5 ? Math.round(length * 2) / 2 : Math.round(length);
    return [rounded, isJobbing ? 1 + Math.floor(next() * 12) : 2 + Math.floor(next() * 59)] as const;
  });
  return order(
    pieces,
    stocks.map((length) => [length] as const),
    { kerf: 1.6, trim: 10, grip: 60 },
  );
}

/** A separate check of a plan, in mm and from the order as typed: pieces, room with kerf, trim and grip, stock. */
export function faultsOf(input: CutPlanInput, problem: CutProblem, { plan }: BestPlan): readonly string[] {
  const wanted = new Map<number, number>();
  input.lengths.forEach((length, i) => wanted.set(length, (wanted.get(length) ?? 0) + (input.quantities[i] ?? 0)));
  const faults: string[] = [];
  const used = input.stocks.map(() => 0);
  for (const [pattern, times] of plan) {
    const stock = input.stocks[pattern.stock]!;
    const cut = pattern.cuts.flatMap(([i, pieces]) => Array.from({ length: pieces }, () => problem.lengths[i]! / 1e6));
    // With a grip each piece is sawn off; without one the last may be the bar's own end.
    const needs = cut.reduce((sum, length) => sum + length + input.kerf, input.trim + input.grip);
    const room = input.grip > 0 ? stock : stock + input.kerf;
    if (needs > room + 1e-6) faults.push(`${needs} of ${room}`);
    used[pattern.stock]! += times;
    for (const length of cut) wanted.set(length, (wanted.get(length) ?? NaN) - times);
  }
  for (const [length, left] of wanted) if (left !== 0) faults.push(`${left} of ${length} left`);
  used.forEach((bars, s) => {
    if (bars > (input.stockQuantities?.[s] ?? Infinity)) faults.push(`${bars} of stock ${s}`);
  });
  return faults;
}

export const planned = (input: CutPlanInput): BestPlan & { readonly problem: CutProblem } => {
  const problem = cutProblem(input);
  return { ...bestPlan(problem), problem };
};
