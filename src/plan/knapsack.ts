import { planConstants } from "../data/planConstants";
import type { Pattern } from "./cutPattern";
import type { Work } from "./planWork";

/** What may be put into one bar: values and widths by length, at most so many of each. */
export interface KnapsackInput {
  readonly capacity: number;
  readonly values: readonly number[];
  readonly widths: readonly number[];
  readonly most: readonly number[];
  /** Only what is worth more is found. */
  readonly floor: number;
  readonly work: Work;
  readonly nodes?: number;
}

const worthless = 1e-9;
const closeness = 1e-10;

/** Lengths worth something, the most valuable per width first. */
const ranked = ({ values, widths, most, capacity }: KnapsackInput): readonly number[] =>
  values
    .flatMap((value, i) => (value > worthless && most[i]! > 0 && widths[i]! <= capacity ? [i] : []))
    .sort((a, b) => values[b]! / widths[b]! - values[a]! / widths[a]! || widths[b]! - widths[a]!);

/** Sums from each place to the end. */
const sumsFrom = (
  list: readonly number[],
  add: (all: number, next: number) => number,
  none: number,
): readonly number[] => {
  const sums = [...list, none];
  for (let k = list.length - 1; k >= 0; k -= 1) sums[k] = add(sums[k + 1]!, list[k]!);
  return sums;
};

/** Value of the best filling if pieces could be cut in parts: never below the true best. */
const inParts = (order: readonly number[], { values, widths, most, capacity }: KnapsackInput): number => {
  let [room, value] = [capacity, 0];
  for (const i of order) {
    const pieces = Math.min(most[i]!, room / widths[i]!);
    value += pieces * values[i]!;
    room -= pieces * widths[i]!;
  }
  return value;
};

/** The lengths of one search in their order. */
class Filling {
  private readonly values: readonly number[];
  private readonly widths: readonly number[];
  private readonly most: readonly number[];
  private readonly narrowest: readonly number[];
  private readonly rest: readonly number[];
  private readonly pieces: number[];
  best: number;
  nodes = 0;
  isCut = false;

  constructor(
    private readonly order: readonly number[],
    private readonly input: KnapsackInput,
    private readonly tell: (cuts: Pattern["cuts"]) => void,
  ) {
    this.values = order.map((i) => input.values[i]!);
    this.widths = order.map((i) => input.widths[i]!);
    this.most = order.map((i) => input.most[i]!);
    this.narrowest = sumsFrom(this.widths, Math.min, Infinity);
    const worths = this.values.map((value, k) => value * this.most[k]!);
    this.rest = sumsFrom(worths, (a, b) => a + b, 0);
    this.pieces = order.map(() => 0);
    this.best = input.floor;
  }

  private isBelow(value: number): boolean {
    return value <= this.best + closeness * (1 + Math.abs(this.best));
  }

  private leaf(k: number, value: number): void {
    if (this.isBelow(value)) return;
    this.best = value;
    this.tell(this.order.slice(0, k).map((i, j) => [i, this.pieces[j]!] as const));
  }

  /** The most that the lengths from k on can add to a bar with that room. */
  private reach(k: number, room: number): number {
    return (room * this.values[k]!) / this.widths[k]!;
  }

  search(k: number, room: number, value: number): void {
    this.nodes += 1;
    if (this.nodes > (this.input.nodes ?? planConstants.knapsackNodes.value)) this.isCut = true;
    if (this.isCut) return;
    if (k === this.order.length || room < this.narrowest[k]!) {
      this.leaf(k, value);
      return;
    }
    if (this.isBelow(value + Math.min(this.rest[k]!, this.reach(k, room)))) return;
    const next = k + 1;
    for (let count = Math.min(this.most[k]!, Math.floor(room / this.widths[k]!)); count >= 0; count -= 1) {
      this.pieces[k] = count;
      const [left, worth] = [room - count * this.widths[k]!, value + count * this.values[k]!];
      const isOpen = next < this.order.length && left >= this.narrowest[next]!;
      // Fewer of this length leave more room, but never for more worth than this.
      if (isOpen && this.isBelow(worth + this.reach(next, left))) return;
      this.search(next, left, worth);
      if (this.isCut) return;
    }
  }
}

/**
 * The most valuable filling of one bar, by depth-first search with the value of what is left as bound; every filling that
 * is better than all before it is told.
 * @param input capacity and widths [nm]; values [cost]; most [-]; floor [cost]
 * @param tell is given each better filling
 * @returns an upper bound of the value, exact unless the search was cut off; at least the floor [cost]
 * @source P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting-stock problem, part II, 1963 (from memory)
 */
export function knapsack(input: KnapsackInput, tell: (cuts: Pattern["cuts"]) => void): number {
  const order = ranked(input);
  if (order.length === 0) return 0;
  const filling = new Filling(order, input, tell);
  filling.search(0, input.capacity, 0);
  input.work.add(filling.nodes);
  return filling.isCut ? inParts(order, input) : Math.max(filling.best, 0);
}
