import type { Profile, SlabRun, Station } from "./profile";
import type { Part, Slab, Spread } from "./slab";
import { slabArea } from "./slabArea";
import { slabContact } from "./slabContact";
import { slabStations } from "./slabStations";

/** A depth and how far the contact there is from the width [mm]. */
interface Off {
  readonly at: number;
  readonly by: number;
}

/** Depth between two others at which a contact is `width`, by regula falsi with the Illinois step; its sides differ in sign. */
function crossing(slab: Slab, spread: Spread, width: number, from: Off, to: Off): number {
  let [a, b, fa, fb] = [from.at, to.at, from.by, to.by];
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

/** Depths inside a slab where its contact passes the width. */
function crossings(
  { slab, above, first, last, stations, factor }: SlabRun,
  spread: Spread,
  width: number,
): readonly number[] {
  const cuts: number[] = [];
  let before: Off = { at: slab.top, by: first.contact - width };
  for (let i = 0; i <= stations.length; i += 1) {
    const station = stations[i];
    const here: Off =
      station === undefined
        ? { at: slab.bottom, by: last.contact - width }
        : { at: station.depth - above, by: station.contact / factor - width };
    if (before.by * here.by < 0) cuts.push(crossing(slab, spread, width, before, here));
    before = here;
  }
  return cuts;
}

const scaledStation = (s: Station, scale: number): Station => ({
  depth: s.depth * scale,
  travel: s.travel * scale,
  contact: s.contact * scale,
  extent: s.extent * scale,
  longest: s.longest * scale,
  shortest: s.shortest * scale,
});

/** A piece of a slab as one station: its area over its height. */
function whole({ slab, times, above }: Part, spread: Spread): Station {
  const deep = slab.bottom - slab.top;
  const contact = slabArea(slab, spread) / deep;
  return {
    depth: above + (slab.top + slab.bottom) / 2,
    travel: times * deep,
    contact,
    extent: contact,
    longest: contact,
    shortest: contact,
  };
}

/**
 * The stations of a profile, with every slab divided where its total contact passes a width: on each side of it a sum over
 * stations of their travel, or of travel × contact, is exact. Where nothing else is asked, one station a piece is enough.
 * @param input profile of the stack; width [mm]; sums: only these sums are wanted
 * @returns stations [mm]
 * @source geometry
 */
export function splitStations({
  profile: { runs, spread, barHeight, scale },
  width,
  sums,
}: {
  readonly profile: Profile;
  readonly width: number;
  readonly sums: boolean;
}): readonly Station[] {
  const stations: Station[] = [];
  for (const run of runs) {
    const { slab, times, above } = run;
    const cuts = crossings(run, spread, width / scale);
    if (cuts.length === 0 && !sums) stations.push(...run.stations);
    else {
      [...cuts, slab.bottom].forEach((bottom, i) => {
        const piece = { slab: { top: cuts[i - 1] ?? slab.top, bottom, courses: slab.courses }, times, above };
        if (sums) stations.push(whole(piece, spread));
        else stations.push(...slabStations(piece, spread, barHeight).stations);
      });
    }
  }
  return scale === 1 ? stations : stations.map((s) => scaledStation(s, scale));
}
