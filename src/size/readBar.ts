import { shapeWords, type Family } from "../data/sectionWords";
import { InputError } from "../errors";
import type { Units } from "../quantities";
import { angleBar } from "./angleBar";
import type { Bar } from "./bar";
import { hollowBar, type HollowWords } from "./hollowBar";
import { pipeBar } from "./pipeBar";
import { plainBar, type PlainFamily } from "./plainBar";
import { platedBar } from "./platedBar";
import { rolledBar } from "./rolledBar";
import { seriesBar } from "./seriesBar";
import { shapeFamily } from "./shapeFamily";
import { sizeDimensions } from "./sizeDimensions";
import type { Parts } from "./sizeParts";
import type { Token } from "./sizeTokens";

/**
 * The bar that sorted words and numbers name.
 * @param parts shape words, numbers, schedule [-]
 * @param text the whole size, for refusals [text]
 * @param defaultUnit unit of bare numbers [text]
 * @returns the bar [-]
 * @throws InputError "invalid" or "none", as the families' readers do
 * @source common practice, no source
 */
export function readBar(parts: Parts, text: string, defaultUnit: Units): Bar {
  const { family, word } = shapeFamily(parts.shapes, text);
  const numbers = sizeDimensions(parts.numbers, family === "rolled", hollows.has(family));
  if (parts.schedule !== undefined && !piped.has(family))
    throw new InputError("invalid", "section", "a schedule belongs to a pipe, not to {word}", { word });
  // Angles of EN 10056-1 and ASTM A6 come before those of other standards: angleBar asks for them.
  const series = drawn.has(family) && word !== "l" ? seriesBar(word, numbers) : undefined;
  return series ?? readers[family]({ family, parts, numbers, text, word, defaultUnit });
}

interface Named {
  readonly family: Family | "none";
  readonly parts: Parts;
  readonly numbers: readonly Token[];
  readonly text: string;
  readonly word: string;
  readonly defaultUnit: Units;
}

const hollows: ReadonlySet<string> = new Set(["tube", "box", "hss", "pipe"]);
/** Families whose words name tables of further standards too. */
const drawn: ReadonlySet<string> = new Set(["rolled", "vague", "angle", "tee"]);
const piped: ReadonlySet<string> = new Set(["pipe", "tube", "none"]);

const solid =
  (family: PlainFamily) =>
  ({ numbers, defaultUnit }: Named): Bar =>
    plainBar(family, numbers, defaultUnit);
const hollow =
  (family: HollowWords["family"]) =>
  ({ parts, numbers, defaultUnit }: Named): Bar =>
    hollowOrPipe(family, parts, numbers, defaultUnit);

const readers: Readonly<Record<Family | "none", (named: Named) => Bar>> = {
  none: ({ parts, numbers, text, defaultUnit }) => {
    if (parts.schedule !== undefined) return pipeBar(numbers, parts.schedule, false);
    // Outside and inside diameter: nothing but a tube has both.
    const both = ["od", "id"].every((tag) => numbers.some((number) => number.tag === tag));
    return both ? hollowOrPipe("tube", parts, numbers, defaultUnit) : refuseShapeless(numbers, text);
  },
  round: solid("round"),
  square: solid("square"),
  hexagon: solid("hexagon"),
  octagon: solid("octagon"),
  flat: solid("flat"),
  tee: solid("tee"),
  bar: ({ numbers, text, defaultUnit }) => barBar(numbers, text, defaultUnit),
  tube: hollow("tube"),
  box: hollow("box"),
  hss: hollow("hss"),
  pipe: hollow("pipe"),
  angle: ({ numbers, defaultUnit }) => angleBar(numbers, defaultUnit),
  rolled: ({ word, numbers }) => rolledBar(word, numbers),
  area: () => areaBar(),
  vague: ({ word, numbers, text, defaultUnit }) =>
    platedBar(word, numbers, defaultUnit) ?? vagueBar(word, numbers, text),
};

function hollowOrPipe(
  family: HollowWords["family"],
  { shapes, schedule, cold }: Parts,
  numbers: readonly Token[],
  defaultUnit: Units,
): Bar {
  const has = (...words: readonly string[]) => words.some((word) => shapes.includes(word));
  const nominal = numbers.length < 2 || has("dn", "nps");
  if ((schedule !== undefined && numbers.length < 2) || (family === "pipe" && nominal))
    return pipeBar(numbers, schedule, has("dn"));
  const round = has("chs") || shapes.some((word) => shapeWords.get(word) === "round");
  const rectangular = has("rhs") || shapes.some((word) => shapeWords.get(word) === "flat");
  const tagged = numbers.some(({ tag }) => tag === "od" || tag === "id");
  const named = family === "tube" && numbers.length === 3 && !round && !tagged ? "box" : family;
  return hollowBar({ family: named, european: has("chs", "shs", "rhs"), cold, rectangular }, numbers, defaultUnit);
}

function barBar(numbers: readonly Token[], text: string, defaultUnit: Units): Bar {
  if (numbers.length === 1 && numbers[0]!.tag === "od") return plainBar("round", numbers, defaultUnit);
  if (numbers.length === 1)
    throw new InputError("invalid", "section", '"{text}": say which bar, round, square or hex', { text });
  const [first, second] = numbers;
  const square = numbers.length === 2 && first!.value === second!.value && first!.unit === second!.unit;
  return plainBar(square ? "square" : "flat", numbers, defaultUnit);
}

function refuseShapeless(numbers: readonly Token[], text: string): never {
  if (numbers.length === 0)
    throw new InputError(
      "invalid",
      "section",
      '"{text}" names no shape and no dimensions; write for example "round 7"',
      { text },
    );
  const shape = ["round", "flat", "box"][Math.min(numbers.length, 3) - 1]!;
  throw new InputError("invalid", "section", 'which shape is {text}? Write for example "{shape} {text}"', {
    text,
    shape,
  });
}

function areaBar(): never {
  throw new InputError(
    "invalid",
    "section",
    'an area is written alone: "area 38.5", with in2, cm2 or mm2 behind it if wanted',
  );
}

function vagueBar(word: string, numbers: readonly Token[], text: string): Bar {
  const channel = word.startsWith("ch");
  if (channel && numbers.length === 2) return rolledBar("c", numbers);
  if (channel || word === "u") {
    throw new InputError(
      "invalid",
      "section",
      '"{text}": say UPN 200 (tapered flanges) or UPE 200 (parallel flanges), or use the full US designation such as C8x11.5',
      { text },
    );
  }
  throw new InputError(
    "invalid",
    "section",
    '"{text}": give the series too, for example W12x50, S12x50, IPE 300 or HEB 200',
    { text },
  );
}
