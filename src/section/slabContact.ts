import { edgeX } from "./edgeX";
import type { Contact, Slab, Spread } from "./slab";

/** Chips are not shed in a shorter gap than this [mm]; judgement. */
const shortGap = 20;

/**
 * Contacts of the band at one depth of a slab: the metal between every second pair of edges, for all columns.
 * @param slab with its edges [-]
 * @param depth in the slab's own frame [mm]
 * @param spread columns, their distance [mm], mitre and share [-]
 * @returns total, extent, longest joined run, longest and shortest single contact [mm]
 * @source geometry; bars that touch count as separate contacts, but as one for chips
 */
export function slabContact(slab: Slab, depth: number, spread: Spread): Contact {
  const starts: number[] = [];
  const lengths: number[] = [];
  let [total, longest, shortest, left, right] = [0, 0, Infinity, Infinity, -Infinity];
  for (const { edges, drop, shift } of slab.courses) {
    for (let i = 0; i + 1 < edges.length; i += 2) {
      const start = edgeX(edges[i]!, depth - drop) + shift;
      const length = Math.max(0, edgeX(edges[i + 1]!, depth - drop) + shift - start);
      starts.push(start);
      lengths.push(length);
      total += length;
      longest = Math.max(longest, length);
      shortest = Math.min(shortest, length);
      left = Math.min(left, start);
      right = Math.max(right, start + length);
    }
  }
  const { columns, spacing, secant, share } = spread;
  const scale = secant * share;
  const ordered = columns === 1 && slab.courses.length === 1;
  const run = ordered ? longestRun(starts, lengths, secant) : spreadRun(starts, lengths, spread);
  const extent = (right - left + (columns - 1) * spacing) * secant;
  return {
    contact: columns * total * scale,
    extent,
    joined: run * scale,
    longest: longest * scale,
    shortest: shortest * scale,
  };
}

/** Greatest sum of lengths with short gaps between them; starts run from left to right. */
function longestRun(starts: readonly number[], lengths: readonly number[], secant: number): number {
  let [longest, run, end] = [0, 0, -Infinity];
  for (let i = 0; i < starts.length; i++) {
    const length = lengths[i]!;
    run = (starts[i]! - end) * secant < shortGap ? run + length : length;
    end = starts[i]! + length;
    longest = Math.max(longest, run);
  }
  return longest;
}

function spreadRun(
  starts: readonly number[],
  lengths: readonly number[],
  { columns, spacing, secant }: Spread,
): number {
  const spans = Array.from({ length: columns }, (_, column) =>
    starts.map((start, i) => [start + column * spacing, lengths[i]!] as const),
  ).flat();
  spans.sort((a, b) => a[0] - b[0]);
  return longestRun(
    spans.map(([start]) => start),
    spans.map(([, length]) => length),
    secant,
  );
}
