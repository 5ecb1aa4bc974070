import type { BarShape, Flanged } from "../size/barShape";
import type { Corner, Outline } from "./section";

/**
 * The outline of a shape in its drawn position: flat, box wide side down; beam and channel with the web level (channel
 * toes down); angle with its long leg down; tee flange down; hexagon and octagon on a flat.
 * @param shape sizes [mm]
 * @returns loops of corners [mm]
 * @source EN 10365, EN 10056-1, EN 10210-2, EN 10219-2, ASTM A6/A6M (nominal outlines)
 */
export function shapeOutline(shape: BarShape): Outline {
  switch (shape.kind) {
    case "round":
      return { loops: [box(0, 0, shape.diameter, shape.diameter, shape.diameter / 2)] };
    case "square":
      return { loops: [box(0, 0, shape.across, shape.across, 0)] };
    case "flat":
      return { loops: [box(0, 0, shape.width, shape.thickness, 0)] };
    case "hexagon":
      return { loops: [regular(6, shape.across)] };
    case "octagon":
      return { loops: [regular(8, shape.across)] };
    case "tube":
      return {
        loops: hollow(shape.diameter, shape.diameter, shape.wall, shape.diameter / 2, shape.diameter / 2 - shape.wall),
      };
    case "box":
      return { loops: hollow(shape.width, shape.height, shape.wall, shape.outer, shape.inner) };
    case "angle":
      return { loops: [angle(shape.long, shape.short, shape.thickness, shape.root, shape.toe)] };
    case "beam":
      return { loops: [beam(shape)] };
    case "channel":
      return { loops: [channel(shape)] };
    case "tee":
      return { loops: [tee(shape)] };
  }
}

const at = (x: number, y: number, r = 0): Corner => ({ x, y, r });

function box(x: number, y: number, width: number, height: number, r: number): readonly Corner[] {
  return [at(x, y, r), at(x + width, y, r), at(x + width, y + height, r), at(x, y + height, r)];
}

function hollow(
  width: number,
  height: number,
  wall: number,
  outer: number,
  inner: number,
): readonly (readonly Corner[])[] {
  return [box(0, 0, width, height, outer), [...box(wall, wall, width - 2 * wall, height - 2 * wall, inner)].reverse()];
}

/** Regular polygon lying on a flat: its two level sides are drawn exactly level. */
function regular(sides: 6 | 8, across: number): readonly Corner[] {
  const s = across / 2;
  const half = s * Math.tan(Math.PI / sides);
  if (sides === 8)
    return [
      at(-half, -s),
      at(half, -s),
      at(s, -half),
      at(s, half),
      at(half, s),
      at(-half, s),
      at(-s, half),
      at(-s, -half),
    ];
  return [at(-half, -s), at(half, -s), at(2 * half, 0), at(half, s), at(-half, s), at(-2 * half, 0)];
}

function angle(long: number, short: number, t: number, root: number, toe: number): readonly Corner[] {
  return [at(0, 0), at(0, -short), at(t, -short, toe), at(t, -t, root), at(long, -t, toe), at(long, 0)];
}

/** Flange thickness at its tip and its foot; a toe radius larger than the tip (one MC shape of another taper) is cut to fit. */
function flangeEnds(
  { flange, slope, toe }: Flanged,
  outstand: number,
): { readonly tip: number; readonly foot: number; readonly toe: number } {
  const tip = flange - (slope * outstand) / 2;
  const most = tip / Math.tan((Math.PI / 2 - Math.atan(slope)) / 2);
  return { tip, foot: flange + (slope * outstand) / 2, toe: Math.min(toe, most) };
}

function beam(shape: Flanged): readonly Corner[] {
  const { depth: h, width: b, web, root } = shape;
  const { tip, foot, toe } = flangeEnds(shape, (b - web) / 2);
  const [near, far] = [(b - web) / 2, (b + web) / 2];
  const upper = [
    at(0, 0),
    at(tip, 0, toe),
    at(foot, near, root),
    at(h - foot, near, root),
    at(h - tip, 0, toe),
    at(h, 0),
  ];
  return [
    ...upper,
    at(h, b),
    at(h - tip, b, toe),
    at(h - foot, far, root),
    at(foot, far, root),
    at(tip, b, toe),
    at(0, b),
  ];
}

function channel(shape: Flanged): readonly Corner[] {
  const { depth: h, width: b, web, root } = shape;
  const { tip, foot, toe } = flangeEnds(shape, b - web);
  return [
    at(0, 0),
    at(h, 0),
    at(h, b),
    at(h - tip, b, toe),
    at(h - foot, web, root),
    at(foot, web, root),
    at(tip, b, toe),
    at(0, b),
  ];
}

function tee({ depth: h, width: b, web, flange, root, toe }: Flanged): readonly Corner[] {
  const [near, far, face] = [(b - web) / 2, (b + web) / 2, h - flange];
  return [
    at(near, 0),
    at(far, 0),
    at(far, face, root),
    at(b, face, toe),
    at(b, h),
    at(0, h),
    at(0, face, toe),
    at(near, face, root),
  ];
}
