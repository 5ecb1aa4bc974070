import { planConstants as k } from "../data/planConstants";
import { InputError } from "../errors";

/** What is to be cut, from which bars; all lengths in mm. */
export interface CutPlanInput {
  readonly lengths: readonly number[];
  /** undefined: none. */
  readonly quantities: readonly (number | undefined)[];
  readonly stocks: readonly number[];
  readonly stockQuantities: readonly (number | undefined)[] | undefined;
  readonly stockCosts: readonly (number | undefined)[] | undefined;
  readonly kerf: number;
  readonly trim: number;
  readonly grip: number;
  readonly usefulRemnant: number;
}

export interface Stock {
  /** Whole bar, and what trim leaves of it [nm]. */
  readonly length: number;
  readonly room: number;
  /** What pieces with their kerf may fill [nm]. */
  readonly capacity: number;
  /** Whole units of cost. */
  readonly cost: number;
  readonly limit: number;
}

/** In whole nanometres: 1/64 in is 396,875 of them, but no whole number of micrometres. */
export interface CutProblem {
  /** Different lengths, longest first [nm]. */
  readonly lengths: readonly number[];
  /** Length and kerf [nm]. */
  readonly widths: readonly number[];
  readonly demand: readonly number[];
  readonly stocks: readonly Stock[];
  /** Every cost is a whole multiple of it. */
  readonly grain: number;
  /** Shortest remnant that goes back to stock; 0: none does [nm]. */
  readonly useful: number;
}

/** More bars than any order takes. */
export const unlimited = 1e7;
const perMm = 1e6;
const nm = (mm: number): number => Math.round(mm * perMm);
const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));

function refuseInput({ lengths, quantities, stockCosts, stocks }: CutPlanInput): void {
  const pieces = quantities.reduce<number>((sum, quantity) => sum + (quantity ?? 0), 0);
  if (lengths.length > k.cutLines.value || pieces > k.cutPieces.value)
    throw new InputError("invalid", "lengths", "a plan takes at most {lines} rows and {pieces} pieces", {
      lines: String(k.cutLines.value),
      pieces: k.cutPieces.value.toLocaleString("en"),
    });
  const priced = (stockCosts ?? []).filter((cost) => cost !== undefined).length;
  if (priced > 0 && priced < stocks.length)
    throw new InputError("invalid", "stockCosts", "{parameter} are given for some stocks only: give all or none");
}

/** Costs as whole units; without costs one length counts bars, several count length. */
function costsOf({ stocks, stockCosts }: CutPlanInput): readonly number[] {
  const costs = (stockCosts ?? []).flatMap((cost) => cost ?? []);
  if (costs.length === 0) return stocks.length === 1 ? [1] : stocks.map(nm);
  const scale = [1, 10, 100, 1000].find((by) => costs.every((c) => Math.abs(c * by - Math.round(c * by)) < 1e-6));
  return costs.map((cost) => Math.round(cost * (scale ?? 10_000)));
}

/** Equal lengths as one, longest first. */
function merged({ lengths, quantities }: CutPlanInput): readonly (readonly [length: number, quantity: number])[] {
  const all = new Map<number, number>();
  lengths.forEach((length, i) => all.set(nm(length), (all.get(nm(length)) ?? 0) + (quantities[i] ?? 0)));
  return [...all].filter(([, quantity]) => quantity > 0).sort((a, b) => b[0] - a[0]);
}

/**
 * The order in whole numbers. A bar takes pieces with their kerf up to stock − trim − grip; without a grip the last piece
 * may be the bar's own end, stock − trim + kerf.
 * @param input lengths, stocks, kerf, trim, grip, usefulRemnant [mm]; quantities, stockQuantities [-]; stockCosts [money]
 * @returns lengths and widths [nm], demand [-], stocks with capacity [nm] and cost [units]
 * @throws InputError "invalid": a length fits no stock; costs for some stocks only; more than 200 rows or 20,000 pieces
 * @source geometry, as piecesPerBar
 */
export function cutProblem(input: CutPlanInput): CutProblem {
  refuseInput(input);
  const { stocks, stockQuantities, kerf, trim, grip } = input;
  const costs = costsOf(input);
  const bars = stocks.map((length, s): Stock => {
    const room = nm(length) - nm(trim);
    const capacity = grip > 0 ? room - nm(grip) : room + nm(kerf);
    return { length: nm(length), room, capacity, cost: costs[s]!, limit: stockQuantities?.[s] ?? unlimited };
  });
  const orders = merged(input);
  const lengths = orders.map(([length]) => length);
  const widths = lengths.map((length) => length + nm(kerf));
  const most = Math.max(...bars.map(({ capacity }) => capacity));
  if (widths[0]! > most) {
    const row = input.lengths.findIndex((length) => nm(length) === lengths[0]);
    throw new InputError(
      "invalid",
      "lengths",
      "{parameter}, row {row}: {length} does not fit: {room} of a bar can be cut",
      {
        row: String(row + 1),
        length: { number: lengths[0]! / perMm, quantity: "length" },
        room: { number: Math.max(0, (most - nm(kerf)) / perMm), quantity: "length" },
      },
    );
  }
  const useful = nm(input.usefulRemnant);
  return {
    lengths,
    widths,
    demand: orders.map(([, quantity]) => quantity),
    stocks: bars,
    grain: costs.reduce(commonDivisor),
    useful,
  };
}
