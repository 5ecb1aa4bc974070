import { cuttingConstants as k } from "../data/cuttingConstants";

/**
 * Thinnest lasting contact of a round tube that is cut square: T with (y/R) + 1 − √(1 − T²/4R²) = the given share of the
 * way. Over y from mid height a wall is thinner than T, √(R² − y²) − √(r² − y²) < T, so y² = r² − ((R² − r² − T²)/2T)²; at
 * top and bottom the single chord is.
 * @param input outer radius R, radius of the bore r [mm]; share of the way [-]
 * @returns T [mm]
 * @source geometry; the share and the gap under which two walls are one: judgement, data/cuttingConstants
 */
export function tubeThinnest({
  radius,
  bore,
  share,
}: {
  readonly radius: number;
  readonly bore: number;
  readonly share: number;
}): number {
  // Where the walls are less than the gap apart they are one contact, and no thin one.
  const apart = Math.sqrt(Math.max(0, bore ** 2 - (k.touchingGap.value / 2) ** 2));
  const below = (t: number): number => {
    const half = (radius ** 2 - bore ** 2 - t ** 2) / (2 * t);
    const walls = half >= bore ? 0 : Math.min(apart, Math.sqrt(bore ** 2 - Math.max(0, half) ** 2));
    return walls / radius + 1 - Math.sqrt(Math.max(0, 1 - (t / (2 * radius)) ** 2));
  };
  let [low, high] = [0, 2 * radius];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (below(middle) < share) low = middle;
    else high = middle;
  }
  return high;
}
