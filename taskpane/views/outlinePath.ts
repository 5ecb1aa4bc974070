import type { Corner, Outline } from "../../src/section/section";

const n = (x: number): string => String(Number(x.toFixed(3)));

/** One rounded corner: where the incoming side ends, and the arc to where the next begins. */
function corner(
  before: Corner,
  { x, y, r }: Corner,
  after: Corner,
): {
  readonly start: readonly [number, number];
  readonly end: readonly [number, number];
  readonly r: number;
  readonly sweep: 0 | 1;
} {
  const [inLength, outLength] = [Math.hypot(x - before.x, y - before.y), Math.hypot(after.x - x, after.y - y)];
  if (r === 0 || inLength === 0 || outLength === 0) return { start: [x, y], end: [x, y], r: 0, sweep: 0 };
  const [ix, iy, ox, oy] = [
    (x - before.x) / inLength,
    (y - before.y) / inLength,
    (after.x - x) / outLength,
    (after.y - y) / outLength,
  ];
  const turn = Math.atan2(ix * oy - iy * ox, ix * ox + iy * oy);
  const tangent = r * Math.tan(Math.abs(turn) / 2);
  return {
    start: [x - ix * tangent, y - iy * tangent],
    end: [x + ox * tangent, y + oy * tangent],
    r,
    sweep: turn > 0 ? 1 : 0,
  };
}

const loopPath = (loop: readonly Corner[], wide: number): string => {
  const corners = loop.map((at, i) =>
    corner(loop[(i + loop.length - 1) % loop.length]!, at, loop[(i + 1) % loop.length]!),
  );
  const point = ([x, y]: readonly [number, number]): string => `${n(x * wide)} ${n(y)}`;
  const steps = corners.map(
    ({ start, end, r, sweep }, i) =>
      `${i === 0 ? "M" : "L"}${point(start)}${r === 0 ? "" : `A${n(r * wide)} ${n(r)} 0 0 ${sweep} ${point(end)}`}`,
  );
  return `${steps.join("")}Z`;
};

/** The core's own loops as one path, holes by the even-odd rule; `wide` stretches it across, as a mitre does. */
export const outlinePath = ({ loops }: Outline, wide = 1): string => loops.map((loop) => loopPath(loop, wide)).join("");
