import type { Corner, Outline } from "./section";

/**
 * Area of an outline: shoelace sum of its corners, less r²·(tan(δ/2) − δ/2) for each corner that turns by δ and is
 * rounded outwards, and as much more for each rounded inwards.
 * @param outline loops of corners [mm]
 * @returns area [mm²]
 * @source Green's theorem (geometry)
 */
export function outlineArea(outline: Outline): number {
  return Math.abs(outline.loops.reduce((sum, loop) => sum + loopArea(loop), 0));
}

function loopArea(loop: readonly Corner[]): number {
  let area = 0;
  loop.forEach((corner, i) => {
    const before = loop[(i + loop.length - 1) % loop.length]!;
    const after = loop[(i + 1) % loop.length]!;
    area += (corner.x * after.y - after.x * corner.y) / 2;
    if (corner.r === 0) return;
    const cross = (corner.x - before.x) * (after.y - corner.y) - (corner.y - before.y) * (after.x - corner.x);
    const dot = (corner.x - before.x) * (after.x - corner.x) + (corner.y - before.y) * (after.y - corner.y);
    const turn = Math.atan2(cross, dot);
    area -= corner.r ** 2 * (Math.tan(turn / 2) - turn / 2);
  });
  return area;
}
