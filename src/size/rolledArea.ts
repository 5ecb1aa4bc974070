import type { BarShape } from "./barShape";

/**
 * Area of a beam, channel, tee or angle with its fillets and rounded toes, in closed form.
 *
 * Flanges of mean thickness f and fall s: h·w + 2·(b − w)·f + n·k·(r² − e²), n corners (beam 4, channel 2; tee 2 with one
 * flange); k = cot(θ/2) − (π − θ)/2 at a corner of θ = 90° + atan s. Angle: t·(a + b − t) + (1 − π/4)·(r² − 2·e²).
 * @param shape h depth, b width, w web, f flange, a and b legs, t thickness, r root and e toe radius [mm]
 * @returns area; 0 for other shapes [mm²]
 * @source geometry
 */
export function rolledArea(shape: BarShape): number {
  switch (shape.kind) {
    case "angle": {
      const { long, short, thickness, root, toe } = shape;
      return thickness * (long + short - thickness) + (1 - Math.PI / 4) * (root ** 2 - 2 * toe ** 2);
    }
    case "beam":
    case "channel":
    case "tee": {
      const { depth, width, web, flange, slope, root, toe } = shape;
      const corner = Math.PI / 2 + Math.atan(slope);
      const fillet = (1 / Math.tan(corner / 2) - (Math.PI - corner) / 2) * (root ** 2 - toe ** 2);
      const [flanges, corners] = { beam: [2, 4], channel: [2, 2], tee: [1, 2] }[shape.kind] as [number, number];
      return depth * web + flanges * (width - web) * flange + corners * fillet;
    }
    default:
      return 0;
  }
}
