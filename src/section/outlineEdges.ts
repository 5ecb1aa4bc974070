import type { Corner, Outline } from "./section";

/**
 * A piece of an outline on which depth and x both run one way. Straight: x + slope·(y − top). Arc (r > 0): x + side·√(r² − (y − y of its
 * centre)²).
 */
export interface Edge {
  readonly top: number;
  readonly bottom: number;
  readonly x: number;
  readonly slope: number;
  readonly centre: number;
  readonly r: number;
  readonly side: number;
}

interface Rounded {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  readonly arcs: readonly Edge[];
}

/**
 * The outline as straight edges and arcs that each run one way in depth and in x; level edges are left out, since no
 * depth has a defined width there.
 * @param outline loops of corners [mm]
 * @returns edges [mm]
 * @source geometry: fillet of radius r at a corner that turns by δ touches its sides r·tan(δ/2) from the corner
 */
export function outlineEdges(outline: Outline): readonly Edge[] {
  const edges: Edge[] = [];
  for (const loop of outline.loops) {
    const rounded = loop.map((corner, i) =>
      roundCorner(loop[(i + loop.length - 1) % loop.length]!, corner, loop[(i + 1) % loop.length]!),
    );
    rounded.forEach((corner, i) => {
      const next = rounded[(i + 1) % rounded.length]!;
      edges.push(...corner.arcs, ...line(corner.x1, corner.y1, next.x0, next.y0));
    });
  }
  return edges;
}

function line(x0: number, y0: number, x1: number, y1: number): readonly Edge[] {
  // A side used up by the roundings of its two ends leaves only rounding error, which must not become an edge.
  const least = 1e-10 * (Math.abs(x0) + Math.abs(y0) + Math.abs(x1) + Math.abs(y1));
  if (Math.abs(y1 - y0) <= least) return [];
  const slope = (x1 - x0) / (y1 - y0);
  const [top, bottom, x] = y0 < y1 ? [y0, y1, x0] : [y1, y0, x1];
  return [{ top, bottom, x, slope, centre: 0, r: 0, side: 0 }];
}

function roundCorner(before: Corner, corner: Corner, after: Corner): Rounded {
  const { x, y, r } = corner;
  if (r === 0) return { x0: x, y0: y, x1: x, y1: y, arcs: [] };
  const inLength = Math.hypot(x - before.x, y - before.y);
  const outLength = Math.hypot(after.x - x, after.y - y);
  const [ix, iy] = [(x - before.x) / inLength, (y - before.y) / inLength];
  const [ox, oy] = [(after.x - x) / outLength, (after.y - y) / outLength];
  const turn = Math.atan2(ix * oy - iy * ox, ix * ox + iy * oy);
  const tangent = r * Math.tan(Math.abs(turn) / 2);
  const [x0, y0] = [x - ix * tangent, y - iy * tangent];
  const side = Math.sign(turn);
  const [cx, cy] = [x0 - iy * r * side, y0 + ix * r * side];
  const start = Math.atan2(y0 - cy, x0 - cx);
  return { x0, y0, x1: x + ox * tangent, y1: y + oy * tangent, arcs: arc(cx, cy, r, start, start + turn) };
}

/** Cut at every quarter of the circle, so that each part runs one way. */
function arc(cx: number, cy: number, r: number, from: number, to: number): readonly Edge[] {
  const quarter = Math.PI / 2;
  const [low, high] = from < to ? [from, to] : [to, from];
  const edges: Edge[] = [];
  const end = high / quarter - 1e-9;
  for (let at = low / quarter; at < end;) {
    const next = Math.min(Math.floor(at + 1e-9) + 1, high / quarter);
    const side = Math.cos(((at + next) / 2) * quarter) < 0 ? -1 : 1;
    const [a, b] = [cy + r * quarterSine(at), cy + r * quarterSine(next)];
    if (a !== b) edges.push({ top: Math.min(a, b), bottom: Math.max(a, b), x: cx, slope: 0, centre: cy, r, side });
    at = next;
  }
  return edges;
}

/** sin(q·π/2), exact at whole quarters. */
function quarterSine(quarters: number): number {
  const whole = Math.round(quarters);
  return Math.abs(quarters - whole) < 1e-9 ? [0, 1, 0, -1][((whole % 4) + 4) % 4]! : Math.sin((quarters * Math.PI) / 2);
}
