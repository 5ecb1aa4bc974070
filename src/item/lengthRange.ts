import { InputError } from "../errors";
import type { Line } from "./item";
import { itemRefusal } from "./itemRefusal";
import { textAt } from "./textAt";

/**
 * The refusal of a length that is one end of a range or one of several: 300-320 mm, 6"/8" long. A dash or a slash glues another number to it.
 * @param line whose roles are filled in [-]
 * @param span atoms of the length, and its words [text]
 * @returns the refusal naming both; undefined where the length stands alone [-]
 * @source common practice, no source
 */
export function lengthRange(
  { atoms, roles }: Line,
  { from, to, text }: { readonly from: number; readonly to: number; readonly text: string },
): InputError | undefined {
  const isNumber = (i: number): boolean => atoms[i]?.kind === "number" && roles[i] === "";
  const isGlue = (i: number): boolean => /^[-/]$/.test(textAt(atoms, i)) && roles[i] === "" && !atoms[i]!.spaced;
  let least = from - 2;
  if (!isNumber(least)) least -= 1;
  if (isGlue(from - 1) && !atoms[from]!.spaced && isNumber(least)) return lengthBetween(textAt(atoms, least), text);
  const most = to + 2;
  return isGlue(to + 1) && isNumber(most) && !atoms[most]!.spaced
    ? lengthBetween(text, textAt(atoms, most))
    : undefined;
}

/** The refusal of a range. */
export const lengthBetween = (least: string, most: string): InputError =>
  itemRefusal("a length from {least} to {most}: write the one that is meant", { least, most });
