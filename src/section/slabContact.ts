import { cuttingConstants as k } from "../data/cuttingConstants";
import { edgeX } from "./edgeX";
import type { Contact, Slab, Spread } from "./slab";

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
  const bar = barEnds(slab, depth);
  const ends = columns === 1 && slab.courses.length === 1 ? bar : repeated(bar, columns, spacing);
  const gap = k.touchingGap.value / secant;
  let [total, longest, shortest, run] = [0, 0, Infinity, 0];
  for (let i = 0; i < ends.length; i += 2) {
    const [start, length] = [ends[i]!, ends[i + 1]! - ends[i]!];
    if (i > 0 && start - ends[i - 1]! >= gap) {
      longest = Math.max(longest, run);
      shortest = Math.min(shortest, run);
      run = 0;
    }
    run += length;
    total += length;
  }
  const scale = secant * share;
  return {
    contact: total * scale,
    extent: ends.length === 0 ? 0 : (ends[ends.length - 1]! - ends[0]!) * secant,
    longest: Math.max(longest, run) * scale,
    shortest: Math.min(shortest, run) * scale,
  };
}

/** Where the metal of one bar of every row begins and ends at a depth, two and two, each row from left to right. */
function barEnds({ courses }: Slab, depth: number): number[] {
  const ends: number[] = [];
  for (const { edges, drop, shift } of courses) {
    for (let i = 0; i + 1 < edges.length; i += 2) {
      const start = edgeX(edges[i]!, depth - drop) + shift;
      ends.push(start, Math.max(start, edgeX(edges[i + 1]!, depth - drop) + shift));
    }
  }
  return ends;
}

/** The same for all columns, from left to right. */
function repeated(bar: readonly number[], columns: number, spacing: number): readonly number[] {
  const spans: (readonly [number, number])[] = [];
  for (let column = 0; column < columns; column += 1)
    for (let i = 0; i < bar.length; i += 2) spans.push([bar[i]! + column * spacing, bar[i + 1]! + column * spacing]);
  return spans.sort(([a], [b]) => a - b).flat();
}
