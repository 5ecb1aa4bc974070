import { InputError } from "../errors";
import { edgeX } from "./edgeX";
import { outlineEdges, type Edge } from "./outlineEdges";
import { outlineArea } from "./outlineArea";
import type { Outline, Section } from "./section";
import type { Course, Slab, Stack } from "./slab";

type Row = { readonly drop: number; readonly shift: number };

/**
 * Cuts a stack into slabs in which every contact changes smoothly. Plain rows repeat one bar; nested rounds lie (√3/2)·d apart, shifted by d/2.
 * @param section the stack [-]
 * @returns slabs of the different parts of the stack [mm]
 * @throws InputError "invalid": only an area is known
 * @source geometry
 */
export function sectionStack(section: Section): Stack {
  if (section.outline === undefined) {
    throw new InputError("invalid", "section", "an area alone has no shape: write for example round 7, flat 6x1");
  }
  const edges = outlineEdges(section.outline);
  const { left, right, top, bottom } = bounds(edges);
  const [barWidth, barHeight] = [right - left, bottom - top];
  const first: Row = { drop: -top, shift: -left };
  const half = section.nested && section.rows > 1 ? barWidth / 2 : 0;
  const secant = 1 / Math.cos((section.mitre * Math.PI) / 180);
  const spread = {
    columns: section.columns,
    spacing: barWidth,
    secant,
    share: section.pieceArea / outlineArea(section.outline),
  };
  const width = section.columns * barWidth + half;
  if (half === 0) {
    const mirrored = isMirrored(section.outline, top + bottom, 1e-9 * barHeight);
    const period = mirrored ? barHeight / 2 : barHeight;
    const layer = {
      times: section.rows * (mirrored ? 2 : 1),
      period,
      mirrored,
      slabs: slabs(edges, [first], 0, period),
    };
    return { barHeight, width, spread, layers: [layer], height: section.rows * barHeight };
  }
  const { layers, height } = nested(edges, first, half, section.rows, barHeight);
  return { barHeight, width, spread, layers, height };
}

/** Nested rounds: the first row alone, the rows that overlap, and what is left below the last. */
function nested(
  edges: readonly Edge[],
  first: Row,
  half: number,
  rows: number,
  barHeight: number,
): Pick<Stack, "layers" | "height"> {
  const spacing = (barHeight * Math.sqrt(3)) / 2;
  const second: Row = { drop: first.drop + spacing, shift: first.shift + half };
  const layer = (times: number, of: readonly Row[], from: number, to: number) => ({
    times,
    period: to - from,
    mirrored: false,
    slabs: slabs(edges, of, from, to),
  });
  const layers = [
    layer(1, [first], 0, spacing),
    layer(rows - 1, [first, second], spacing, 2 * spacing),
    layer(1, [first], spacing, barHeight),
  ];
  return { layers, height: barHeight + (rows - 1) * spacing };
}

/** Whether every corner has its image across mid height; `ends` is the sum of the least and greatest depth. */
function isMirrored(outline: Outline, ends: number, least: number): boolean {
  const corners = outline.loops.flat();
  return corners.every(({ x, y, r }) =>
    corners.some((other) => Math.abs(other.x - x) < least && Math.abs(other.y + y - ends) < least && other.r === r),
  );
}

/** Every corner and every extreme of an arc is the end of an edge. */
function bounds(edges: readonly Edge[]): {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
} {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const edge of edges) {
    const [a, b] = [edgeX(edge, edge.top), edgeX(edge, edge.bottom)];
    left = Math.min(left, a, b);
    right = Math.max(right, a, b);
    top = Math.min(top, edge.top);
    bottom = Math.max(bottom, edge.bottom);
  }
  return { left, right, top, bottom };
}

function slabs(edges: readonly Edge[], rows: readonly Row[], from: number, to: number): readonly Slab[] {
  const least = 1e-9 * to;
  const ends: number[] = [];
  for (const { drop } of rows) for (const { top, bottom } of edges) ends.push(top + drop, bottom + drop);
  const breaks = [from];
  for (const y of ends.sort((a, b) => a - b))
    if (y - breaks[breaks.length - 1]! > least && y < to - least) breaks.push(y);
  return breaks.map((top, i) => {
    const bottom = breaks[i + 1] ?? to;
    return {
      top: top - from,
      bottom: bottom - from,
      courses: rows.map((row) => course(edges, row, top, bottom, from)).filter((c) => c.edges.length > 0),
    };
  });
}

function course(edges: readonly Edge[], { drop, shift }: Row, top: number, bottom: number, from: number): Course {
  const middle = (top + bottom) / 2 - drop;
  const crossing = edges.filter((edge) => edge.top < middle && edge.bottom > middle);
  return { edges: crossing.sort((a, b) => edgeX(a, middle) - edgeX(b, middle)), drop: drop - from, shift };
}
