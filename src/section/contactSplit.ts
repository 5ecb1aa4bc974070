import type { Section } from "./section";
import { sectionStack } from "./sectionStack";
import type { Slab, Spread } from "./slab";
import { slabArea } from "./slabArea";
import { slabContact } from "./slabContact";

/** Parts into which a slab is divided before its crossings are looked for: in each the contact rises or falls only. */
const parts = 8;

/** The depth in [from, to] at which the contact is `width`; it is on different sides at the two ends. */
function crossing(slab: Slab, from: number, to: number, width: number, spread: Spread): number {
  const wideAt = (depth: number): boolean => slabContact(slab, depth, spread).contact >= width;
  const wideFirst = wideAt(from);
  let [low, high] = [from, to];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (wideAt(middle) === wideFirst) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Depths of a slab at which the contact passes `width`, with its ends. */
function splitDepths(slab: Slab, width: number, spread: Spread): readonly number[] {
  const depths = Array.from({ length: parts + 1 }, (_, i) => slab.top + ((slab.bottom - slab.top) * i) / parts);
  const crossings = depths.slice(1).flatMap((to, i) => {
    const from = depths[i]!;
    const wide = [from, to].map((depth) => slabContact(slab, depth, spread).contact >= width);
    return wide[0] === wide[1] ? [] : [crossing(slab, from, to, width, spread)];
  });
  return [slab.top, ...crossings, slab.bottom];
}

/**
 * Splits a cut where its total contact passes a width: the area cut where the contact is at least that wide, and the
 * height over which it is narrower. Both in closed form between the crossings, which are found by halving.
 * @param input section; width [mm]
 * @returns wideArea [mm²], narrowHeight [mm]
 * @throws InputError "invalid": an area alone has no shape
 * @source geometry
 */
export function contactSplit({ section, width }: { readonly section: Section; readonly width: number }): {
  readonly wideArea: number;
  readonly narrowHeight: number;
} {
  const { layers, spread } = sectionStack(section);
  let [wideArea, narrowHeight] = [0, 0];
  for (const { times, slabs } of layers) {
    for (const slab of slabs) {
      const depths = splitDepths(slab, width, spread);
      for (let i = 0; i + 1 < depths.length; i += 1) {
        const piece = { ...slab, top: depths[i]!, bottom: depths[i + 1]! };
        const wide = slabContact(slab, (piece.top + piece.bottom) / 2, spread).contact >= width;
        if (wide) wideArea += times * slabArea(piece, spread);
        else narrowHeight += times * (piece.bottom - piece.top);
      }
    }
  }
  return { wideArea, narrowHeight };
}
