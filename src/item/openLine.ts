import type { Units } from "../quantities";
import type { Atom } from "./item";
import { itemAtoms } from "./itemAtoms";
import { pairedSizes } from "./pairedSizes";
import { plainNotation } from "./plainNotation";
import { translateLine, type Translation } from "./translateLine";

/** A line before it is read in one unit: its atoms, its languages, and a word that names no metal bar. */
export interface OpenLine extends Pick<Translation, "languages" | "stop" | "series"> {
  readonly atoms: readonly Atom[];
  /** Unit of numbers that stand a second time in brackets, in the other unit. */
  readonly other: Units | undefined;
  /** Brackets with another measure than stands before them. */
  readonly odd: string | undefined;
}

/** One section of two angles. */
const pair = /(?<![\p{L}\d])2l(?=\d)/iu;

/**
 * Puts a line into plain English atoms.
 * @param description the line [text]
 * @returns atoms, languages, and a word that names goods, a plastic or another shape, if any [-]
 * @source common practice, no source
 */
export function openLine(description: string): OpenLine {
  const { text, languages, stop, series } = translateLine(description);
  const once = pairedSizes(plainNotation(text, languages));
  return {
    atoms: itemAtoms(once.text.replace(pair, "l")),
    languages,
    stop: stop ?? (pair.test(once.text) ? { kind: "other shape", word: "2L" } : undefined),
    series,
    other: once.other,
    odd: once.odd,
  };
}
