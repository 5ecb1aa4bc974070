import { workingOf } from "../steps";
import type { Material } from "./material";
import { pieceMass } from "./pieceMass";

interface MassInput {
  readonly section: { readonly pieceArea: number };
  readonly length: number;
  readonly material: Material;
}

/** The working of MASS. */
// prettier-ignore
export const massWorking = workingOf(({ section: { pieceArea: area }, length, material }: MassInput) => ({
  area, length, density: material.density, mass: pieceMass({ area, length, material }),
}), [
  ["area", "A", "area of one bar, square cut", "", "area", "geometry of the size"],
  ["length", "length", "length of the piece", "", "length", "yours"],
  ["density", "density", "density of the material", "", "density", "see MATERIAL"],
  ["mass", "m", "mass of the piece", "A × length × density", "mass", "definition"],
]);
