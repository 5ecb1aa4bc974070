import { edgeIntegral } from "./edgeIntegral";
import type { Slab, Spread } from "./slab";

/**
 * Area that the band cuts in a slab, in closed form: ∫x dy of every second edge from the next, for all columns.
 * @param slab with its edges; its top and bottom bound the area [mm]
 * @param spread columns, mitre and share [-]
 * @returns area [mm²]
 * @source geometry
 */
export function slabArea({ top, bottom, courses }: Slab, { columns, secant, share }: Spread): number {
  let area = 0;
  for (const { edges, drop } of courses) {
    edges.forEach((edge, i) => {
      area += (i % 2 === 0 ? -1 : 1) * edgeIntegral(edge, top - drop, bottom - drop);
    });
  }
  return area * columns * secant * share;
}
