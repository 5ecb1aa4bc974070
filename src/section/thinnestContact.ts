import type { SlabRun } from "./profile";

interface Piece {
  readonly low: number;
  readonly high: number;
  readonly travel: number;
}

/**
 * Thinnest lasting contact: the shortest single contact is smaller than it over a given share of the way. Between stations the contact, or
 * in curved slabs its square, is taken to run straight.
 * @param runs slabs with their stations [-]
 * @param share of the way [-]
 * @returns contact [mm]
 * @source definition; measured against closed forms within 0.5 % (round, diamond)
 */
export function thinnestContact(runs: readonly SlabRun[], share: number): number {
  const level = runs[0]!.first.shortest;
  if (runs.every((run) => isLevel(run, level))) return level;
  const pieces: Piece[] = [];
  for (const run of runs) addPieces(run, pieces);
  let [high, way] = [0, 0];
  for (const piece of pieces) {
    high = Math.max(high, piece.high);
    way += piece.travel;
  }
  let low = 0;
  for (let step = 0; step < 40; step++) {
    const middle = (low + high) / 2;
    if (travelBelow(pieces, middle) < share * way) low = middle;
    else high = middle;
  }
  return Math.sqrt(high);
}

const isLevel = ({ first, last, stations }: SlabRun, level: number): boolean =>
  first.shortest === level && last.shortest === level && stations.length === 1;

/** Pieces between neighbouring depths, as squares of the shortest contact; straight slabs are cut finer, so that squares serve them too. */
function addPieces({ stations, first, last, slab, above, times }: SlabRun, pieces: Piece[]): void {
  const top = above + slab.top;
  const height = slab.bottom - slab.top;
  // The square of a contact runs nearly straight where a round begins.
  const curved = slab.courses.some(({ edges }) => edges.some(({ r }) => r > 0));
  let [y, value] = [0, first.shortest];
  for (let i = 0; i <= stations.length; i++) {
    const station = stations[i];
    const [nextY, next] = station === undefined ? [height, last.shortest] : [station.depth - top, station.shortest];
    const cuts = curved || next === value ? 1 : 4;
    const step = (next - value) / cuts;
    for (let k = 0; k < cuts; k++)
      pieces.push(pieceOf(value + k * step, value + (k + 1) * step, ((nextY - y) * times) / cuts));
    [y, value] = [nextY, next];
  }
}

function pieceOf(a: number, b: number, travel: number): Piece {
  return { low: Math.min(a, b) ** 2, high: Math.max(a, b) ** 2, travel };
}

function travelBelow(pieces: readonly Piece[], square: number): number {
  let travel = 0;
  for (const piece of pieces) {
    if (square >= piece.high) travel += piece.travel;
    else if (square > piece.low) travel += (piece.travel * (square - piece.low)) / (piece.high - piece.low);
  }
  return travel;
}
