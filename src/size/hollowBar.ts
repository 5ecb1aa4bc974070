import { bwgWalls } from "../data/gauges";
import { InputError } from "../errors";
import type { Units } from "../quantities";
import type { Bar } from "./bar";
import { sizeUnits, type Dimension } from "./sizeUnits";
import type { Token } from "./sizeTokens";
import { wrongCount } from "./wrongCount";

/** What the words say of a hollow bar beside its dimensions. */
export interface HollowWords {
  readonly family: "tube" | "box" | "hss" | "pipe";
  /** CHS, SHS and RHS imply millimetres. */
  readonly european: boolean;
  readonly cold: boolean;
  /** Called rectangular: both sides are wanted. */
  readonly rectangular: boolean;
}

/**
 * Round tube, and square or rectangular tube. Outside and inside corner radii: 2t and t (AISC) for inch sizes and HSS; else 1.5t and t hot
 * finished (EN 10210-2), or 2t and t up to 6 mm, 2.5t and 1.5t up to 10 mm, 3t and 2t above, cold formed (EN 10219-2). The nominal wall counts.
 * @param words family, and whether cold formed [-]
 * @param numbers as written: outside x wall, outside OD x inside ID, or height x width x wall [-]
 * @param defaultUnit unit of bare numbers [text]
 * @returns the bar [-]
 * @throws InputError "invalid": wrong number of dimensions, wall of half the size or more
 * @source EN 10210-2, EN 10219-2, AISC Manual Part 1
 */
export function hollowBar(words: HollowWords, numbers: readonly Token[], defaultUnit: Units): Bar {
  const { family } = words;
  const count = numbers.length;
  const square = family === "box" && count === 2;
  if (count < (words.rectangular ? 3 : 2) || count > wants[family].most)
    throw wrongCount(family, wants[family].takes, count, wants[family].most);
  const walled = numbers.map(gaugeWall);
  const gauged = numbers.flatMap(({ unit: of, text }) =>
    of === "ga" ? [`${text} gauge taken from the Birmingham table (tube)`] : [],
  );
  const {
    list,
    unit,
    notes: said,
  } = sizeUnits(
    walled,
    family === "box" ? "box" : "tube",
    impliedUnit(words, walled),
    gauged.length > 0 ? "inch" : defaultUnit,
  );
  const notes = [...said, ...gauged];
  if (count === 2 && !square) return tube(list, notes);
  const wall = list.find(({ tag }) => tag === "wall") ?? list[count - 1]!;
  const sides = list.filter((dimension) => dimension !== wall).sort((a, b) => b.mm - a.mm);
  return box(words, [sides[0]!, sides[1] ?? sides[0]!, wall], unit, notes);
}

/** A gauge is the wall in inches. */
function gaugeWall(number: Token): Token {
  const wall = number.unit === "ga" ? bwgWalls.get(number.value) : undefined;
  return wall === undefined ? number : { ...number, value: Number(wall), text: wall, unit: "in", tag: "wall" };
}

const wants = {
  tube: { most: 2, takes: "outside diameter x wall (tube 6x0.5)" },
  pipe: { most: 2, takes: "outside diameter x wall (pipe 4.5x0.237)" },
  box: { most: 3, takes: "height x width x wall (box 6x4x1/4)" },
  hss: { most: 3, takes: "height x width x wall (HSS6x4x1/4)" },
};

function impliedUnit({ family, european }: HollowWords, numbers: readonly Token[]): "in" | "mm" | undefined {
  const wall = numbers[numbers.length - 1]!.value;
  if (family === "hss") return wall >= 2 ? "mm" : "in";
  if (!european) return undefined;
  return numbers.length === 3 && wall < 1.5 && numbers[0]!.value <= 24 ? "in" : "mm";
}

function tube(list: readonly Dimension[], notes: readonly string[]): Bar {
  const outside = list.find(({ tag }) => tag === "od") ?? list.find(({ tag }) => tag === "")!;
  const other = list.find((dimension) => dimension !== outside);
  if (outside === undefined || other === undefined)
    throw new InputError(
      "invalid",
      "section",
      'a tube needs its outside diameter; write "tube 6 OD x 5 ID" or "tube 6x0.5"',
    );
  const wall = other.tag === "id" ? fromInside(outside, other) : other;
  if (2 * wall.mm >= outside.mm) {
    throw new InputError(
      "invalid",
      "section",
      'the wall {wall} is more than half of the outside diameter {outside}; tube is written outside diameter x wall. If the second number is the inside diameter write "tube {od} OD x {id} ID"',
      { wall: wall.text, outside: outside.text, od: plainNumber(outside), id: plainNumber(wall) },
    );
  }
  return {
    text: `tube ${outside.text} x ${wall.text} wall`,
    notes,
    shape: { kind: "tube", diameter: outside.mm, wall: wall.mm },
  };
}

function fromInside(outside: Dimension, inside: Dimension): Dimension {
  if (inside.mm >= outside.mm)
    throw new InputError("invalid", "section", "the inside diameter must be smaller than the outside diameter");
  const mm = (outside.mm - inside.mm) / 2;
  const inches = outside.text.endsWith("in") && inside.text.endsWith("in");
  const number = Number((inches ? mm / 25.4 : mm).toFixed(6));
  return { mm: inches ? number * 25.4 : number, text: `${number} ${inches ? "in" : "mm"}`, tag: "wall" };
}

const plainNumber = ({ text }: Dimension): string => text.split(" ")[0]!;

function box(
  words: HollowWords,
  [large, small, wall]: readonly [Dimension, Dimension, Dimension],
  unit: "in" | "mm",
  notes: readonly string[],
): Bar {
  if (2 * wall.mm >= small.mm) {
    throw new InputError(
      "invalid",
      "section",
      "the wall {wall} is more than half of the {side} side; box is written height x width x wall",
      { wall: wall.text, side: small.text },
    );
  }
  const american = words.family === "hss" || unit === "in";
  const [outer, inner] = american ? [2, 1] : words.cold ? coldRadii(wall.mm) : [1.5, 1];
  const half = small.mm / 2;
  const shape = {
    kind: "box" as const,
    width: large.mm,
    height: small.mm,
    wall: wall.mm,
    outer: Math.min(outer * wall.mm, half),
    inner: Math.min(inner * wall.mm, half - wall.mm),
  };
  const text = `${words.family === "hss" ? "HSS" : "box"} ${large.text} x ${small.text} x ${wall.text} wall`;
  const made = american
    ? "outside corner radius 2t"
    : words.cold
      ? "cold formed corners (EN 10219-2)"
      : "hot finished corners (EN 10210-2)";
  return {
    text: american || !words.cold ? text : `${text} cold`,
    notes: [...notes, `calculated from the nominal wall, ${made}`],
    shape,
  };
}

function coldRadii(wall: number): readonly [number, number] {
  if (wall <= 6) return [2, 1];
  return wall <= 10 ? [2.5, 1.5] : [3, 2];
}
