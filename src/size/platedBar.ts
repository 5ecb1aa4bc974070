import { InputError } from "../errors";
import type { Units } from "../quantities";
import type { Bar } from "./bar";
import { sizeUnits } from "./sizeUnits";
import type { Token } from "./sizeTokens";

/**
 * A section of no series, written by all its dimensions: a beam H 200x100x5.5x8, depth x width x web x flange; a channel U 40x20x3, depth x
 * flange x thickness. Calculated with sharp corners.
 * @param word that names the shape [text]
 * @param numbers as written [-]
 * @param defaultUnit unit of bare numbers [text]
 * @returns the bar, or undefined where the dimensions are not all written [-]
 * @throws InputError "invalid": a thickness of half the section or more
 * @source geometry
 */
export function platedBar(word: string, numbers: readonly Token[], defaultUnit: Units): Bar | undefined {
  const channel = word === "u" || word.startsWith("ch");
  if (numbers.length !== (channel ? 3 : 4)) return undefined;
  const name = channel ? "u" : "h";
  const { list, notes } = sizeUnits(numbers, name, undefined, defaultUnit);
  const [depth, width, web, flange = web] = list.map(({ mm }) => mm) as [number, number, number, number?];
  if (2 * flange >= depth || (channel ? web >= width : 2 * web >= width))
    throw new InputError(
      "invalid",
      "section",
      "{name} is written depth x width x web x flange, a channel depth x flange x thickness",
      {
        name: name.toUpperCase(),
      },
    );
  return {
    text: `${name} ${list.map(({ text }) => text).join(" x ")}`,
    notes: [...notes, "by its dimensions, with sharp corners"],
    shape: { kind: channel ? "channel" : "beam", depth, width, web, flange: flange, slope: 0, root: 0, toe: 0 },
  };
}
