import { cuttingConstants as k } from "../data/cuttingConstants";
import type { Kind, Profile, SlabRun } from "./profile";
import type { Outline, Section } from "./section";
import { rectangleRun, single } from "./rectangleRun";
import { sectionStack } from "./sectionStack";
import type { Contact, Part } from "./slab";
import { slabContact } from "./slabContact";
import { slabStations } from "./slabStations";
import { thinnestContact } from "./thinnestContact";
import { tubeThinnest } from "./tubeThinnest";

/**
 * Engaged width over the height of a stack. Sums over its stations hold to rounding: Σ travel =
 * height, Σ travel·contact = area. A round is
 * the round of diameter 1, times its diameter.
 * @param section the stack [-]
 * @returns area [mm²]; height, widths, contacts and slabs [mm]; kind [text]
 * @throws InputError "invalid": only an area is known
 * @source geometry; the fifth of the way for the thinnest contact: judgement, data/cuttingConstants
 */
export function sectionProfile(section: Section): Profile {
  const diameter = roundDiameter(section);
  if (diameter !== undefined) return scaled(unitRound, diameter, section);
  const { outline, pieces, mitre } = section;
  const rectangle = outline !== undefined && pieces === 1 && mitre === 0 ? rectangleRun(outline) : undefined;
  return rectangle === undefined ? stackProfile(section) : rectangleProfile(rectangle, section);
}

function rectangleProfile(
  { width, height, run }: NonNullable<ReturnType<typeof rectangleRun>>,
  section: Section,
): Profile {
  return {
    section,
    area: section.area,
    height,
    meanWidth: section.area / height,
    maximumWidth: width,
    longestContact: width,
    maximumExtent: width,
    thinnest: Math.min(width, section.area / height),
    kind: "solid",
    runs: [run],
    spread: single,
    barHeight: height,
    scale: 1,
  };
}

function stackProfile(section: Section): Profile {
  const { layers, height, barHeight, width, spread } = sectionStack(section);
  const parts: Part[] = [];
  let above = 0;
  for (const { times, period, slabs } of layers) {
    for (const slab of slabs) parts.push({ slab, times, above });
    above += times * period;
  }
  const runs = parts.map((part): SlabRun => {
    const { slab } = part;
    const [first, last] = [slabContact(slab, slab.top, spread), slabContact(slab, slab.bottom, spread)];
    const { stations, factor } = slabStations(part, spread, barHeight);
    return { slab, times: part.times, above: part.above, stations, factor, first, last };
  });
  const meanWidth = section.area / height;
  const share = k.thinnestWay.value;
  const radii = tubeRadii(section);
  const thin = radii === undefined ? thinnestContact(runs, share) : tubeThinnest({ ...radii, share });
  const { maximumWidth, longestContact } = greatest(runs);
  return {
    section,
    area: section.area,
    height,
    meanWidth,
    maximumWidth,
    longestContact,
    maximumExtent: width * spread.secant,
    thinnest: section.hollow ? thin : Math.min(thin, meanWidth),
    kind: kindOf(section),
    runs,
    spread,
    barHeight,
    scale: 1,
  };
}

/** Between stations a contact is greatest at a break, where it may jump: both sides of each count. */
function greatest(runs: readonly SlabRun[]): Pick<Profile, "maximumWidth" | "longestContact"> {
  let [maximumWidth, longestContact] = [0, 0];
  const take = ({ contact, longest }: Contact) => {
    maximumWidth = Math.max(maximumWidth, contact);
    longestContact = Math.max(longestContact, longest);
  };
  for (const { first, stations, last } of runs) {
    take(first);
    stations.forEach(take);
    take(last);
  }
  return { maximumWidth, longestContact };
}

function kindOf({ pieces, hollow }: Section): Kind {
  if (pieces > 1) return hollow ? "bundle of hollow" : "bundle of solids";
  return hollow ? "hollow" : "solid";
}

/** Side of a loop of four corners that their radii make a circle [mm]; undefined for every other loop. */
function circle(corners: Outline["loops"][number] | undefined): number | undefined {
  if (corners?.length !== 4) return undefined;
  const [width, height] = [0, 1].map((axis) => {
    const along = corners.map(({ x, y }) => (axis === 0 ? x : y));
    return Math.max(...along) - Math.min(...along);
  }) as [number, number];
  const least = 1e-9 * width;
  return width > 0 && Math.abs(width - height) < least && corners.every(({ r }) => Math.abs(2 * r - width) < least)
    ? width
    : undefined;
}

/** Diameter of a single solid round that is cut square [mm]; undefined for every other stack. */
function roundDiameter({ outline, pieces, mitre }: Section): number | undefined {
  return outline?.loops.length === 1 && pieces === 1 && mitre === 0 ? circle(outline.loops[0]) : undefined;
}

/** Radii of a single round tube that is cut square [mm]; undefined for every other stack. */
function tubeRadii({
  outline,
  pieces,
  mitre,
}: Section): { readonly radius: number; readonly bore: number } | undefined {
  if (outline?.loops.length !== 2 || pieces !== 1 || mitre !== 0) return undefined;
  const [outer, inner] = outline.loops.map(circle);
  return outer === undefined || inner === undefined ? undefined : { radius: outer / 2, bore: inner / 2 };
}

const roundOutline: Outline = {
  loops: [[0, 1, 2, 3].map((i) => ({ x: i % 3 === 0 ? 0 : 1, y: i < 2 ? 0 : 1, r: 0.5 }))],
};

/** The round of diameter 1; a fifth of its way has contacts under 2·√(0.1·0.9) of the diameter. */
const unitRound: Profile = {
  ...stackProfile({
    text: "",
    note: "",
    area: Math.PI / 4,
    pieces: 1,
    rows: 1,
    columns: 1,
    nested: false,
    pieceArea: Math.PI / 4,
    hollow: false,
    mitre: 0,
    outline: roundOutline,
  }),
  thinnest: Math.sqrt(k.thinnestWay.value * (2 - k.thinnestWay.value)),
};

/** The unit round times a diameter. */
function scaled(unit: Profile, d: number, section: Section): Profile {
  return {
    section,
    area: section.area,
    height: d,
    meanWidth: section.area / d,
    maximumWidth: d,
    longestContact: d,
    maximumExtent: d,
    thinnest: unit.thinnest * d,
    kind: "solid",
    runs: unit.runs,
    spread: unit.spread,
    barHeight: unit.barHeight,
    scale: d,
  };
}
