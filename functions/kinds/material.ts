import { findMaterial } from "../../src/material/findMaterial";
import { matchMaterial, type MaterialMatch } from "../../src/material/matchMaterial";
import type { Material } from "../../src/material/material";
import type { Cell } from "./cell";
import type { Kind } from "./kind";
import { wrongType } from "./number";
import { renamed, textual } from "./text";

const readDesignation = (cell: Cell | undefined, parameter: string): string | number => {
  if (typeof cell === "string" || typeof cell === "number") return cell;
  throw wrongType(cell ?? null, parameter, "a material");
};

/** Any designation of a grade; a shop's own materials are found first and are never kept by the memo. */
export const material: Kind<Material> = textual(
  "material",
  'any designation, such as "304", "4140" or "1.4301"',
  (value, { shop }, parameter) => renamed(parameter, () => findMaterial(value, shop?.ownMaterials ?? [])),
  ({ shop }) => (shop === undefined || shop.ownMaterials.length === 0 ? "" : undefined),
);

/** A grade with how it was found, for the function that tells about it. */
export const matchedMaterial: Kind<MaterialMatch> = {
  ...(material as unknown as Kind<MaterialMatch>),
  read: (cells, at, { shop }, parameter) =>
    renamed(parameter, () => matchMaterial(readDesignation(cells[at], parameter), shop?.ownMaterials ?? [])),
};
