import { InputError } from "../errors";
import type { Outline } from "./section";
import type { BarShape } from "../size/barShape";
import { shapeOutline } from "./shapeOutline";
import { turnOutline } from "./turnOutline";

/** A bar as it lies. */
export interface Laid {
  readonly outline: Outline;
  /** Orientation as it is printed; undefined where the shape has none. */
  readonly lie: string | undefined;
}

type Lies = readonly (readonly [printed: string, degrees: number, words: string])[];

const level: Lies = [
  ["on flat", 0, "flat"],
  ["on edge", 90, "edge,upright"],
];
const regular = (degrees: number): Lies => [
  ["on flat", 0, "flat"],
  ["point up", degrees, "diamond"],
];

const lies: Readonly<Record<Exclude<BarShape["kind"], "angle">, Lies>> = {
  round: [],
  tube: [],
  square: regular(45),
  hexagon: regular(90),
  octagon: regular(22.5),
  flat: level,
  box: level,
  beam: [
    ["web flat", 0, "web flat,flanges up,flat"],
    ["web up", 90, "web up,upright"],
  ],
  channel: [
    ["toes down", 0, "toes down"],
    ["toes up", 180, "toes up"],
    ["web up", 90, "web up,upright"],
  ],
  tee: [
    ["flange down", 0, "flange down"],
    ["flange up", 180, "flange up"],
  ],
};

/**
 * Lays a bar in the vice. Left out: flat and box wide side down, beam with its web flat, channel toes down, angle heel up, tee flange down,
 * square, hexagon and octagon on a flat.
 * @param shape sizes [mm]
 * @param name of the bar, for refusals [text]
 * @param lie orientation, as in sectionWords.ts [text]
 * @param turn further angle [°]
 * @returns outline as it lies [mm], orientation [text]
 * @throws InputError "invalid": the orientation does not fit the shape
 * @source common practice, no source
 */
export function layBar(shape: BarShape, name: string, lie: string | undefined, turn: number): Laid {
  const drawn = shapeOutline(shape);
  const ways = liesOf(shape);
  const chosen = lie === undefined ? ways[0] : ways.find(([, , words]) => words.split(",").includes(lie));
  if (lie !== undefined && chosen === undefined) {
    const fitting = ways.map(([printed]) => printed).join(", ");
    const hint = fitting === "" ? "it lies the same every way" : "it lies {fitting}";
    throw new InputError("invalid", "section", `"{lie}" does not fit {name}: ${hint}`, { lie, name, fitting });
  }
  // A round stays as it is drawn, so that its mid height remains a break.
  const degrees = chosen === undefined ? 0 : chosen[1] + turn;
  return { outline: degrees === 0 ? drawn : turnOutline(drawn, degrees), lie: chosen?.[0] };
}

function liesOf(shape: BarShape): Lies {
  if (shape.kind === "box" && shape.width === shape.height) return [...level, ["diamond", 45, "diamond"]];
  if (shape.kind !== "angle") return lies[shape.kind];
  // Both toes touch the bed: the line through the inner toe corners comes level.
  const toes = (-Math.atan2(shape.short - shape.thickness, shape.long - shape.thickness) * 180) / Math.PI;
  return [
    ["heel up", toes + 180, "heel up"],
    ["heel down", toes, "heel down"],
    ["leg flat", 0, "leg flat,flat"],
  ];
}
