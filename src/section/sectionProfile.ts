import type { Kind, Profile, Section } from "./section";
import { sectionStack } from "./sectionStack";
import type { Contact } from "./slab";
import { slabContact } from "./slabContact";
import { slabStations, type Part } from "./slabStations";
import { thinnestContact, type SlabRun } from "./thinnestContact";

/**
 * Engaged width over the height of a stack. Sums hold to rounding: Σ travel = height, Σ travel·contact = area.
 * @param section the stack [-]
 * @returns area [mm²]; height, widths, contacts and stations [mm]; kind [text]
 * @throws InputError "invalid": only an area is known
 * @source geometry; gap of 20 mm for joined contacts and the 20 % point for the thinnest are judgement
 */
export function sectionProfile(section: Section): Profile {
  const { layers, height, barHeight, width, spread } = sectionStack(section);
  const parts: Part[] = [];
  let above = 0;
  for (const { times, period, slabs } of layers) {
    for (const slab of slabs) parts.push({ slab, times, above });
    above += times * period;
  }
  const runs = parts.map((part): SlabRun => {
    const { slab, times } = part;
    const curved = slab.courses.some(({ edges }) => edges.some(({ r }) => r > 0));
    const [first, last] = [slabContact(slab, slab.top, spread), slabContact(slab, slab.bottom, spread)];
    return {
      stations: slabStations(part, spread, barHeight),
      first,
      last,
      curved,
      height: slab.bottom - slab.top,
      times,
      top: part.above + slab.top,
    };
  });
  const stations = runs.flatMap((run) => run.stations);
  const meanWidth = section.area / height;
  const thin = thinnestContact(runs, 0.2);
  return {
    section,
    area: section.area,
    height,
    meanWidth,
    ...greatest(runs),
    maximumExtent: width * spread.secant,
    thinnest: section.hollow ? thin : Math.min(thin, meanWidth),
    kind: kindOf(section),
    stations,
  };
}

/** Between stations a contact is greatest at a break, where it may jump: both sides of each count. */
function greatest(runs: readonly SlabRun[]): Pick<Profile, "maximumWidth" | "longestContact" | "longestJoined"> {
  let [maximumWidth, longestContact, longestJoined] = [0, 0, 0];
  const take = ({ contact, longest, joined }: Contact) => {
    maximumWidth = Math.max(maximumWidth, contact);
    longestContact = Math.max(longestContact, longest);
    longestJoined = Math.max(longestJoined, joined);
  };
  for (const { first, stations, last } of runs) {
    take(first);
    stations.forEach(take);
    take(last);
  }
  return { maximumWidth, longestContact, longestJoined };
}

function kindOf({ pieces, hollow }: Section): Kind {
  if (pieces > 1) return hollow ? "bundle of hollow" : "bundle of solids";
  return hollow ? "hollow" : "solid";
}
