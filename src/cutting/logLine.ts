/**
 * Value of a line of points at x, straight in the logarithm of x between points: y0 + (y1 − y0)·ln(x/x0)/ln(x1/x0). Above
 * the last point it stays; below the first it stays, or the first line goes on down.
 * @param points x and y, x rising [-]
 * @param x where [same unit as the points' x]
 * @param below what holds below the first point [text]
 * @returns y [unit of the points' y]
 * @source interpolation: geometry
 */
export function logLine(
  points: readonly (readonly [x: number, y: number])[],
  x: number,
  below: "stays" | "goes on",
): number {
  const last = points[points.length - 1]!;
  if (x >= last[0]) return last[1];
  if (x <= points[0]![0] && below === "stays") return points[0]![1];
  const above = Math.max(
    1,
    points.findIndex(([px]) => px >= x),
  );
  const [[x0, y0], [x1, y1]] = [points[above - 1]!, points[above]!];
  return y0 + ((y1 - y0) * Math.log(x / x0)) / Math.log(x1 / x0);
}
