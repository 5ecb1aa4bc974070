import { InputError } from "../errors";
import type { Units } from "../quantities";
import type { Bar } from "./bar";
import type { BarShape } from "./barShape";
import { sizeUnits } from "./sizeUnits";
import type { Token } from "./sizeTokens";
import { wrongCount } from "./wrongCount";

export type PlainFamily = "round" | "square" | "hexagon" | "octagon" | "flat" | "tee";

const wants: Readonly<Record<PlainFamily, { readonly count: number; readonly name: string; readonly takes: string }>> =
  {
    round: { count: 1, name: "round", takes: "one dimension, the diameter (round 7)" },
    square: { count: 1, name: "square", takes: "one dimension, the side (square 4)" },
    hexagon: { count: 1, name: "hex", takes: "one dimension, across flats (hex 2-1/2)" },
    octagon: { count: 1, name: "octagon", takes: "one dimension, across flats (octagon 2)" },
    flat: { count: 2, name: "flat", takes: "width x thickness (flat 6x1)" },
    tee: { count: 3, name: "tee", takes: "flange width x height x thickness (tee 4x4x1/2)" },
  };

/**
 * A solid bar or a plain tee from its dimensions. A flat's larger side is its width; a square may be written 4x4.
 * @param family which shape [text]
 * @param numbers as written [-]
 * @param defaultUnit unit of bare numbers [text]
 * @returns the bar [-]
 * @throws InputError "invalid": too few or too many dimensions, wall too thick
 * @source EN 10058, EN 10059, EN 10060, EN 10061: sharp nominal corners
 */
export function plainBar(family: PlainFamily, numbers: readonly Token[], defaultUnit: Units): Bar {
  const { count, name, takes } = wants[family];
  const twice =
    family === "square" &&
    numbers.length === 2 &&
    numbers[0]!.value === numbers[1]!.value &&
    numbers[0]!.unit === numbers[1]!.unit;
  const used = twice ? numbers.slice(1) : numbers;
  if (used.length !== count) throw wrongCount(name, takes, used.length, count);
  const odd = used.find(({ tag }) => tag === "id" || (tag === "wall" && count === 1));
  if (odd !== undefined)
    throw new InputError(
      "invalid",
      "section",
      "a solid {name} has no wall and no inside diameter; for a hollow bar write tube or square tube",
      { name },
    );
  const large = family === "tee" && Math.max(...used.map(({ value }) => value)) >= 20 ? "mm" : undefined;
  const { list, notes } = sizeUnits(used, name, large, defaultUnit);
  const ordered = family === "flat" ? [...list].sort((a, b) => b.mm - a.mm) : list;
  return {
    text: `${name} ${ordered.map(({ text }) => text).join(" x ")}`,
    notes,
    shape: plainShape(
      family,
      ordered.map(({ mm }) => mm),
    ),
  };
}

function plainShape(family: PlainFamily, [first = 0, second = 0, third = 0]: readonly number[]): BarShape {
  switch (family) {
    case "round":
      return { kind: "round", diameter: first };
    case "flat":
      return { kind: "flat", width: first, thickness: second };
    case "tee":
      if (third >= Math.min(first, second))
        throw new InputError(
          "invalid",
          "section",
          "the thickness of a tee must be smaller than its flange and height; tee is written width x height x thickness",
        );
      return { kind: "tee", depth: second, width: first, web: third, flange: third, slope: 0, root: 0, toe: 0 };
    default:
      return { kind: family, across: first };
  }
}
