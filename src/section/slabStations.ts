import type { Station } from "./profile";
import type { Part, Slab, Spread } from "./slab";
import { slabArea } from "./slabArea";
import { slabContact } from "./slabContact";

interface Point {
  /** Depth in the slab [0 to 1]. */
  readonly at: number;
  /** Share of the slab's height [-]; all together 1. */
  readonly weight: number;
}

/**
 * Stations of one slab. A slab of constant width has one. Between straight edges they are Gauss points of the depth; where an arc
 * bounds the slab, Gauss points of the angle u in y = m − h·cos u, which takes away the square root at the ends of arcs. What is left of
 * the quadrature's error (arcs that end shortly outside the slab) is divided out with the slab's exact area.
 * @param part slab with its edges, times it is repeated [-], depth of its frame's zero [mm]
 * @param spread columns, their distance [mm], mitre and share [-]
 * @param height of one bar: low slabs get fewer points [mm]
 * @returns stations [mm] and the factor that they carry [-]
 * @source Gauss-Legendre quadrature; exact areas by geometry
 */
export function slabStations(
  { slab, times, above }: Part,
  spread: Spread,
  height: number,
): { readonly stations: readonly Station[]; readonly factor: number } {
  const { top, bottom } = slab;
  const deep = bottom - top;
  const chosen = points(slab, height);
  const contacts = chosen.map(({ at }) => slabContact(slab, top + at * deep, spread));
  const estimate = contacts.reduce((sum, { contact }, i) => sum + chosen[i]!.weight * contact, 0) * deep;
  const factor = slabArea(slab, spread) / estimate;
  const stations = contacts.map(({ contact, extent, longest, shortest }, i): Station => {
    const { at, weight } = chosen[i]!;
    return {
      depth: above + top + at * deep,
      travel: times * weight * deep,
      contact: contact * factor,
      extent,
      longest: longest * factor,
      shortest: shortest * factor,
    };
  });
  return { stations, factor };
}

function points({ top, bottom, courses }: Slab, height: number): readonly Point[] {
  const share = (bottom - top) / height;
  const size = share > 0.25 ? "most" : share > 0.1 ? "many" : share > 0.02 ? "some" : "few";
  if (courses.some(({ edges }) => edges.some(({ r }) => r > 0))) return arcPoints[size];
  return courses.every(({ edges }) => edges.every(({ slope }) => slope === 0)) ? middle : linePoints[size];
}

/** Zeros of the Legendre polynomial of degree n by Newton's method, on [0, 1]. */
function gauss(n: number): readonly Point[] {
  return Array.from({ length: n }, (_, i) => {
    let x = -Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let step = 0; step < 6; step++) {
      let [before, value] = [1, x];
      for (let k = 2; k <= n; k++) [before, value] = [value, ((2 * k - 1) * x * value - (k - 1) * before) / k];
      slope = (n * (x * value - before)) / (x * x - 1);
      x -= value / slope;
    }
    return { at: (1 + x) / 2, weight: 1 / ((1 - x * x) * slope * slope) };
  });
}

function gaussAngle(n: number): readonly Point[] {
  const raw = gauss(n).map(({ at, weight }) => ({
    at: (1 - Math.cos(Math.PI * at)) / 2,
    weight: weight * Math.sin(Math.PI * at),
  }));
  const sum = raw.reduce((total, { weight }) => total + weight, 0);
  return raw.map(({ at, weight }) => ({ at, weight: weight / sum }));
}

const middle: readonly Point[] = [{ at: 0.5, weight: 1 }];
const linePoints = { most: gauss(8), many: gauss(6), some: gauss(4), few: gauss(2) };
const arcPoints = { most: gaussAngle(10), many: gaussAngle(8), some: gaussAngle(5), few: gaussAngle(3) };
