import type { Edge } from "./outlineEdges";

/**
 * ∫x dy along an edge between two depths: the trapezoid of a straight edge; for an arc x₀·(b − a) ± ½[s√(r² − s²) + r² asin(s/r)].
 * @param edge in the frame of its outline [-]
 * @param from upper depth [mm]
 * @param to lower depth [mm]
 * @returns area between the edge and x = 0 [mm²]
 * @source geometry
 */
export function edgeIntegral(edge: Edge, from: number, to: number): number {
  const { top, x, slope, centre, r, side } = edge;
  if (r === 0) return (to - from) * (x + slope * ((from + to) / 2 - top));
  const half = (y: number) => {
    const s = Math.max(-1, Math.min(1, (y - centre) / r));
    return (r * r * (s * Math.sqrt(1 - s * s) + Math.asin(s))) / 2;
  };
  return x * (to - from) + side * (half(to) - half(from));
}
