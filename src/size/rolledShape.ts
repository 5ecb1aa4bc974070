import type { RolledRow } from "./rolledRow";
import { rolledRow } from "./rolledRow";
import type { BarShape } from "./barShape";

type Flanged = Extract<BarShape, { readonly depth: number }>;

/** BarShape and area of a table row. */
export interface RolledShape {
  readonly shape: BarShape;
  /** Published area [mm²]; undefined where the standard's table has none. */
  readonly area: number | undefined;
}

/**
 * BarShape of a rolled section from its row. The flange thickness printed for a tapered flange holds at a fixed place; the shape wants the mean of
 * the outstand: UPN up to 300 8 % at b/2 from the tip, above 5 % at the middle of the outstand; IPN 14 % at b/4; American 1/6 at the middle.
 * @param row of the table [-]
 * @returns shape [mm], published area [mm²]
 * @source EN 10365, DIN 1025-1, DIN 1026-1, ASTM A6/A6M, EN 10056-1; the slopes of IPN and of American shapes from memory, confirmed by the areas
 */
export function rolledShape(row: RolledRow): RolledShape {
  switch (row.family.kind) {
    case "angle":
      return angle(row);
    case "tee":
      return cutTee(row);
    case "beam":
    case "channel":
      return flanged(row, row.family.kind);
  }
}

const millimetres = ({ family }: RolledRow): number => (family.unit === "in" ? 25.4 : 1);
const published = ({ family }: RolledRow, area: number): number => area * (family.unit === "in" ? 25.4 ** 2 : 100);

function angle(row: RolledRow): RolledShape {
  const scale = millimetres(row);
  const [long, short, thickness] = row.key.split("x").map((part) => Number(part) * scale);
  const [root, area, toe] = row.figures;
  // A printed toe radius above the thickness cannot be drawn whole.
  const round = Math.min((toe ?? root! / 2) * scale, thickness!);
  const shape: BarShape = {
    kind: "angle",
    long: long!,
    short: short!,
    thickness: thickness!,
    root: root! * scale,
    toe: round,
  };
  return { shape, area: area === 0 ? undefined : published(row, area!) };
}

/** A WT is half of the W of twice its depth and weight. */
function cutTee(row: RolledRow): RolledShape {
  const parent = row.key
    .split("x")
    .map((part) => String(2 * Number(part)))
    .join("x");
  const { shape } = flanged(rolledRow("W", parent)!, "tee");
  const [depth, area] = row.figures;
  return { shape: { ...shape, depth: depth! * millimetres(row) }, area: published(row, area!) };
}

function flanged(row: RolledRow, kind: Flanged["kind"]): { readonly shape: Flanged; readonly area: number } {
  const scale = millimetres(row);
  const [depth, width, web, thickness, root, area, toe] = row.figures as [
    number,
    number,
    number,
    number,
    number,
    number,
    number | undefined,
  ];
  const [slope, flange] = taper(row.family.slope, depth, width, web, thickness);
  const sizes = {
    depth: depth * scale,
    width: width * scale,
    web: web * scale,
    flange: flange * scale,
    root: root * scale,
    toe: (toe ?? 0) * scale,
  };
  return { shape: { kind, slope, ...sizes }, area: published(row, area) };
}

function taper(
  slope: RolledRow["family"]["slope"],
  depth: number,
  width: number,
  web: number,
  thickness: number,
): readonly [number, number] {
  switch (slope) {
    case "none":
      return [0, thickness];
    case "american":
      return [1 / 6, thickness];
    case "ipn":
      return [0.14, thickness + 0.14 * ((width - web) / 4 - width / 4)];
    case "upn":
      return depth > 300 ? [0.05, thickness] : [0.08, thickness - (0.08 * web) / 2];
  }
}
