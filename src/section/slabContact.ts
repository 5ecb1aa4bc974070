import { cuttingConstants as k } from "../data/cuttingConstants";
import { edgeX } from "./edgeX";
import type { Contact, Slab, Spread } from "./slab";

interface Span {
  readonly start: number;
  readonly length: number;
}

/**
 * Contacts of the band at one depth of a slab: the metal between every second pair of edges, for all columns. Single
 * contacts less than 0.5 mm apart along the band count as one: bars that touch are one.
 * @param slab with its edges [-]
 * @param depth in the slab's own frame [mm]
 * @param spread columns, their distance [mm], mitre and share [-]
 * @returns total, extent, longest and shortest single contact [mm]
 * @source geometry; the gap: judgement, data/cuttingConstants
 */
export function slabContact(slab: Slab, depth: number, spread: Spread): Contact {
  const { columns, spacing, secant, share } = spread;
  const bar = barSpans(slab, depth);
  const single = columns === 1 && slab.courses.length === 1;
  const spans = single ? bar : repeated(bar, columns, spacing);
  const gap = k.touchingGap.value / secant;
  let [total, longest, shortest, run, end] = [0, 0, Infinity, 0, -Infinity];
  for (const { start, length } of spans) {
    if (start - end >= gap && end > -Infinity) {
      longest = Math.max(longest, run);
      shortest = Math.min(shortest, run);
      run = 0;
    }
    run += length;
    total += length;
    end = start + length;
  }
  const scale = secant * share;
  const first = spans[0];
  return {
    contact: total * scale,
    extent: first === undefined ? 0 : (end - first.start) * secant,
    longest: Math.max(longest, run) * scale,
    shortest: Math.min(shortest, run) * scale,
  };
}

/** The metal of one bar of every row at a depth, each row from left to right. */
function barSpans({ courses }: Slab, depth: number): Span[] {
  const spans: Span[] = [];
  for (const { edges, drop, shift } of courses) {
    for (let i = 0; i + 1 < edges.length; i += 2) {
      const start = edgeX(edges[i]!, depth - drop) + shift;
      spans.push({ start, length: Math.max(0, edgeX(edges[i + 1]!, depth - drop) + shift - start) });
    }
  }
  return spans;
}

function repeated(bar: readonly Span[], columns: number, spacing: number): readonly Span[] {
  return Array.from({ length: columns }, (_, column) =>
    bar.map(({ start, length }) => ({ start: start + column * spacing, length })),
  )
    .flat()
    .sort((a, b) => a.start - b.start);
}
