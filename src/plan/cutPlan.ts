import { InputError } from "../errors";
import type { Text } from "../phrase";
import type { Shop } from "../shop/shop";
import { bestPlan, type BestPlan } from "./bestPlan";
import type { Pattern } from "./cutPattern";
import { cutProblem, type CutPlanInput, type CutProblem } from "./cutProblem";

/** A pattern of the plan, or its last row with the sums. */
export interface CutPlanRow {
  /** Length of the bar [mm]. */
  readonly stock: number | undefined;
  readonly bars: number;
  readonly pattern: Text;
  readonly piecesPerBar: number;
  readonly remnant: number;
  readonly yield: number;
  /** Bars, or cost, that no plan goes below; in the last row. */
  readonly bound: number | undefined;
  readonly note: Text;
}

type Order = Omit<CutPlanInput, "usefulRemnant"> & { readonly shop: Shop };

const perMm = 1e6;

/** "3 × 1200 + 2 × 450", in the caller's units. */
function patternText({ cuts }: Pattern, { lengths }: CutProblem): Text {
  const facts = Object.fromEntries(
    cuts.map(([i], k) => [`length${k}`, { number: lengths[i]! / perMm, quantity: "length" as const }]),
  );
  return { template: cuts.map(([, pieces], k) => `${String(pieces)} × {length${k}}`).join(" + "), facts };
}

const piecesIn = ({ cuts }: Pattern): number => cuts.reduce((sum, [, pieces]) => sum + pieces, 0);
const lengthIn = ({ cuts }: Pattern, { lengths }: CutProblem): number =>
  cuts.reduce((sum, [i, pieces]) => sum + pieces * lengths[i]!, 0);

function rowOf(pattern: Pattern, bars: number, problem: CutProblem): CutPlanRow {
  const { length } = problem.stocks[pattern.stock]!;
  const isUseful = problem.useful > 0 && pattern.left >= problem.useful;
  return {
    stock: length / perMm,
    bars,
    pattern: patternText(pattern, problem),
    piecesPerBar: piecesIn(pattern),
    remnant: pattern.left / perMm,
    yield: lengthIn(pattern, problem) / length,
    bound: undefined,
    note: isUseful ? "remnant back to stock" : "",
  };
}

/** How far the plan is proven, as a sentence. */
function proof({ plan, cost, bound, isProven }: BestPlan, { grain, stocks }: CutProblem): string {
  const bars = plan.reduce((sum, [, times]) => sum + times, 0);
  const counted = `${String(bars)} ${bars === 1 ? "bar" : "bars"}`;
  if (stocks.length === 1) {
    const least = Math.round(bound / grain);
    return isProven
      ? `${counted}; no plan needs fewer: proven least`
      : `${counted}; no plan needs fewer than ${String(least)}`;
  }
  const percent = (100 * (cost / bound - 1)).toPrecision(2);
  return isProven
    ? `${counted}; no plan costs less: proven least`
    : `${counted}; not proven: at most ${percent} % above the least`;
}

/**
 * Which lengths to cut from which bars: the plan of fewest bars, or of least cost or length where there are several stocks,
 * with the bound beside it; then the greatest useful remnants. One row a pattern, and a last row with the sums.
 * @param input lengths, stocks, kerf, trim, grip [mm]; quantities, stockQuantities (undefined: no limit) [-]; stockCosts [money]; shop, of which the shortest useful remnant
 * @returns stock, remnant [mm]; bars, piecesPerBar, yield [-]; bound of the bars where there is one stock [-]; pattern and note [text]; in the last row the sums of bars and remnants, the yield of all, and the proof
 * @throws InputError as cutProblem, bestPlan; "invalid": nothing to cut
 * @source see bestPlan; yield = Σ length of pieces / Σ length of bars
 */
export function cutPlan({ shop, ...input }: Order): readonly CutPlanRow[] {
  if (!input.quantities.some((quantity) => quantity !== undefined && quantity > 0))
    throw new InputError("invalid", "quantities", "{parameter} are empty: nothing to cut");
  const problem = cutProblem({ ...input, usefulRemnant: shop.usefulRemnant ?? 0 });
  const best = bestPlan(problem);
  const rows = best.plan.map(([pattern, bars]) => rowOf(pattern, bars, problem));
  const sum = (of: (pattern: Pattern) => number): number =>
    best.plan.reduce((all, [pattern, times]) => all + times * of(pattern), 0);
  const whole = sum(({ stock }) => problem.stocks[stock]!.length);
  const last: CutPlanRow = {
    stock: undefined,
    bars: sum(() => 1),
    pattern: "all",
    piecesPerBar: sum(piecesIn) / sum(() => 1),
    remnant: sum(({ left }) => left) / perMm,
    yield: sum((pattern) => lengthIn(pattern, problem)) / whole,
    bound: problem.stocks.length === 1 ? Math.round(best.bound / problem.grain) : undefined,
    note: proof(best, problem),
  };
  return [...rows, last];
}
