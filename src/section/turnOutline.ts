import type { Outline } from "./section";

/**
 * Turns an outline about the origin; quarter turns are exact.
 * @param outline loops of corners [mm]
 * @param degrees angle, from x towards depth [°]
 * @returns the turned outline [mm]
 * @source geometry
 */
export function turnOutline(outline: Outline, degrees: number): Outline {
  const [cos, sin] = [exactCosine(degrees), exactCosine(degrees - 90)];
  const turn = ({ x, y, r }: { x: number; y: number; r: number }) => ({
    x: x * cos - y * sin,
    y: x * sin + y * cos,
    r,
  });
  return { loops: outline.loops.map((loop) => loop.map(turn)) };
}

/** Whole quarter turns must give 0 and ±1, or a level side would come out a hair inclined. */
function exactCosine(degrees: number): number {
  const quarters = degrees / 90;
  return Number.isInteger(quarters) ? [1, 0, -1, 0][((quarters % 4) + 4) % 4]! : Math.cos((degrees * Math.PI) / 180);
}
