import type { Profile, SlabRun, Station } from "./profile";
import type { Slab, Spread } from "./slab";
import { slabContact } from "./slabContact";
import { slabStations } from "./slabStations";

/** Depth between two others at which a contact is `width`, by regula falsi with the Illinois step; its sides differ in sign. */
function crossing(
  slab: Slab,
  spread: Spread,
  width: number,
  ends: readonly [number, number],
  off: readonly [number, number],
): number {
  let [[a, b], [fa, fb]] = [ends, off];
  for (let step = 0; step < 80; step += 1) {
    const c = (a * fb - b * fa) / (fb - fa);
    const fc = slabContact(slab, c, spread).contact - width;
    if (Math.abs(fc) <= 1e-13 * width || c === a || c === b) return c;
    if (fc * fb < 0) [a, fa] = [b, fb];
    else fa /= 2;
    [b, fb] = [c, fc];
  }
  return b;
}

/** The stations of one slab, divided where its contact passes the width. */
function splitRun(run: SlabRun, { spread, barHeight }: Profile, width: number): readonly Station[] {
  const { slab, above, first, last, stations, factor } = run;
  const ends = [slab.top, ...stations.map((s) => s.depth - above), slab.bottom];
  const off = [first, ...stations, last].map(
    (c, i) => c.contact / (i === 0 || i > stations.length ? 1 : factor) - width,
  );
  const cuts: number[] = [];
  for (let i = 0; i + 1 < ends.length; i += 1)
    if (off[i]! * off[i + 1]! < 0)
      cuts.push(crossing(slab, spread, width, [ends[i]!, ends[i + 1]!], [off[i]!, off[i + 1]!]));
  if (cuts.length === 0) return stations;
  const breaks = [slab.top, ...cuts, slab.bottom];
  return breaks.slice(1).flatMap((bottom, i) => {
    const piece = { slab: { ...slab, top: breaks[i]!, bottom }, times: run.times, above };
    return slabStations(piece, spread, barHeight).stations;
  });
}

/**
 * The stations of a profile, with every slab divided where its total contact passes a width: on each side of it a sum over
 * stations of their travel, or of travel × contact, is exact.
 * @param input profile of the stack; width [mm]
 * @returns stations [mm]
 * @source geometry
 */
export function splitStations({
  profile,
  width,
}: {
  readonly profile: Profile;
  readonly width: number;
}): readonly Station[] {
  if (width >= profile.maximumWidth) return profile.stations;
  return profile.runs.flatMap((run) => splitRun(run, profile, width));
}
