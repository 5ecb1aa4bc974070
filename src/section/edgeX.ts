import type { Edge } from "./outlineEdges";

/**
 * Where an edge crosses a depth: x + slope·(y − top), or x of the centre ± √(r² − (y − y of the centre)²).
 * @param edge in the frame of its outline [-]
 * @param y depth in the same frame [mm]
 * @returns x [mm]
 * @source geometry
 */
export function edgeX({ top, x, slope, centre, r, side }: Edge, y: number): number {
  return r === 0 ? x + slope * (y - top) : x + side * Math.sqrt(Math.max(0, r * r - (y - centre) ** 2));
}
