import type { SlabRun } from "./profile";
import type { Outline } from "./section";
import type { Spread } from "./slab";

/** A single bar that is cut square: nothing is repeated and nothing slants. */
export const single: Spread = { columns: 1, spacing: 0, secant: 1, share: 1 };

/**
 * The one slab of a sharp rectangle that lies as it is drawn, as the cutting of a stack into slabs would give it.
 * @param outline of one bar [mm]
 * @returns width, height [mm] and the slab with its one station; undefined for every other outline
 * @source geometry
 */
export function rectangleRun({
  loops,
}: Outline): { readonly width: number; readonly height: number; readonly run: SlabRun } | undefined {
  const [[a, b, c, d, more] = [], hole] = loops;
  if (hole !== undefined || d === undefined || more !== undefined || a!.r + b!.r + c!.r + d.r > 0) return undefined;
  const level = a!.y === b!.y && c!.y === d.y && a!.x === d.x && b!.x === c!.x;
  const [width, height] = [b!.x - a!.x, c!.y - b!.y];
  if (!level || !(width > 0 && height > 0)) return undefined;
  const edge = (x: number) => ({ top: 0, bottom: height, x, slope: 0, centre: 0, r: 0, side: 0 });
  // Its lower half is its own mirror image.
  const half = height / 2;
  const across = { contact: width, extent: width, longest: width, shortest: width };
  const slab = {
    top: 0,
    bottom: half,
    courses: [{ edges: [edge(0), edge(width)], drop: 0, shift: 0 }],
  };
  const station = { depth: half / 2, travel: height, contact: width, extent: width, longest: width, shortest: width };
  const run = { slab, times: 2, above: 0, stations: [station], factor: 1, first: across, last: across };
  return { width, height, run };
}
