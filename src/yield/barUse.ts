import { yieldConstants as k } from "../data/yieldConstants";

/** How a bar is to be cut, all lengths in mm. */
export interface BarCut {
  readonly stock: number;
  readonly piece: number;
  /** Bar that one cut turns into chips, along the bar. */
  readonly kerf: number;
  /** Squared off the front of the bar, with its own kerf in it. */
  readonly trim: number;
  /** End of the bar that the vice must keep. */
  readonly grip: number;
}

export interface BarUse {
  readonly cuts: number;
  readonly kerf: number;
  readonly remnant: number;
}

/**
 * What becomes of one bar when j pieces are cut from it: kerf = min(j·kerf, left), remnant = stock − trim − j·piece −
 * kerf, which holds the grip. A last piece that is the bar's own end needs no cut.
 * @param bar stock, piece, kerf, trim [mm]; pieces j, no more than fit
 * @returns cuts [-] without the trim cut, kerf in all [mm], remnant [mm]
 * @source geometry
 */
export function barUse({ stock, piece, kerf, trim }: BarCut, pieces: number): BarUse {
  const left = Math.max(0, stock - trim - pieces * piece);
  const used = Math.min(pieces * kerf, left);
  const isEnd = left - (pieces - 1) * kerf <= k.lengthSlack.value;
  const rest = left - used;
  return { cuts: isEnd ? pieces - 1 : pieces, kerf: used, remnant: rest <= k.lengthSlack.value ? 0 : rest };
}
