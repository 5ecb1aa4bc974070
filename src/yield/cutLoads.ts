import { yieldConstants as k } from "../data/yieldConstants";
import { barUse, type BarCut } from "./barUse";
import { piecesPerBar } from "./piecesPerBar";

interface LoadsInput {
  readonly bar: BarCut;
  /** Pieces wanted. */
  readonly quantity: number;
  /** Bars that lie in one stack. */
  readonly perCut: number;
  /** Shortest remnant that goes back to stock [mm]; undefined: none does. */
  readonly usefulRemnant: number | undefined;
}

/** What an order of one length takes, bars side by side in the stack. */
export interface Loads {
  readonly loads: number;
  readonly bars: number;
  /** Cuts of the whole stack, without the trim cuts. */
  readonly cuts: number;
  /** Cuts through single bars, trim cuts included. */
  readonly barCuts: number;
  /** Bar turned into chips, over all bars, trim left out [mm]. */
  readonly kerf: number;
  /** Trim and remnants that do not go back to stock, over all bars [mm]. */
  readonly ends: number;
  /** Remnants that go back to stock, over all bars [mm]. */
  readonly useful: number;
  /** Left of a bar of the last load [mm]. */
  readonly remnant: number;
}

/**
 * Counts pieces, cuts, bars and loads apart. A stack of b bars gives b pieces a cut: rows of pieces = ceil(quantity / b), of
 * which a load gives as many as a bar gives pieces. The last load takes the fewest bars that fill its rows, and its last
 * cut may be part filled: the bars not in it stay one piece longer.
 * @param input bar: stock, piece, kerf, trim, grip [mm]; quantity of pieces, perCut bars in the stack [-]; usefulRemnant [mm]
 * @returns loads, bars, cuts, barCuts [-]; kerf, ends, useful, remnant [mm]
 * @throws InputError as piecesPerBar
 * @source geometry
 */
export function cutLoads({ bar, quantity, perCut, usefulRemnant }: LoadsInput): Loads {
  const each = piecesPerBar(bar);
  const rows = Math.ceil(quantity / perCut);
  const loads = Math.ceil(rows / each);
  const [fullBars, lastRows] = [(loads - 1) * perCut, rows - (loads - 1) * each];
  const lastPieces = quantity - fullBars * each;
  const lastBars = Math.ceil(lastPieces / lastRows);
  const short = lastBars * lastRows - lastPieces;
  const shares = [
    [fullBars, barUse(bar, each)],
    [lastBars - short, barUse(bar, lastRows)],
    [short, barUse(bar, lastRows - 1)],
  ] as const;
  const sum = (of: (use: (typeof shares)[number][1]) => number): number =>
    shares.reduce((s, [count, use]) => s + (count === 0 ? 0 : count * of(use)), 0);
  const bars = fullBars + lastBars;
  const lost = (remnant: number): number =>
    usefulRemnant !== undefined && remnant >= usefulRemnant - k.lengthSlack.value ? 0 : remnant;
  return {
    loads,
    bars,
    cuts: (loads - 1) * shares[0][1].cuts + shares[1][1].cuts,
    barCuts: sum((use) => use.cuts) + (bar.trim > 0 ? bars : 0),
    kerf: sum((use) => use.kerf),
    ends: sum((use) => bar.trim + lost(use.remnant)),
    useful: sum((use) => use.remnant - lost(use.remnant)),
    remnant: shares[1][1].remnant,
  };
}
