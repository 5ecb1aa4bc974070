import type { BarShape } from "./barShape";
import type { SeriesRow } from "./seriesRows";

/**
 * The nominal shape of a row of a further standard.
 * @param row of a table [-]
 * @returns shape [mm]
 * @source the standard named in the table
 */
export function seriesShape({ family, cells }: SeriesRow): BarShape {
  const of = (i: number): number => cells[family.cells[i] ?? -1] ?? 0;
  const [first, second, third, fourth, fifth] = [of(0), of(1), of(2), of(3), of(4)];
  if (family.kind === "angle") {
    const toe = family.cells[4] === -3 ? third / 3 : fifth;
    return { kind: "angle", long: first, short: second, thickness: third, root: fourth, toe };
  }
  const toe = family.cells[5] === -2 ? fifth / 2 : of(5);
  const sizes = { depth: first, width: second, web: third, flange: fourth, root: fifth };
  return { kind: family.kind, ...sizes, slope: family.slope, toe };
}
