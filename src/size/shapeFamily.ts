import { shapeWords, type Family } from "../data/sectionWords";
import { InputError } from "../errors";

/** Words that together name one shape: families present -> the family meant. */
const together: readonly (readonly [readonly Family[], Family])[] = [
  [["hss", "square", "flat", "round", "tube", "box"], "hss"],
  [["box", "square", "flat", "tube"], "box"],
  [["tube", "round"], "tube"],
  [["tube", "square", "flat"], "box"],
  [["pipe", "round", "tube"], "pipe"],
  [["pipe", "tube", "box", "square", "flat"], "box"],
  [["rolled", "vague"], "rolled"],
];

/**
 * The family that the shape words of a size mean together: "square tube" is a box, "round bar" a round.
 * @param shapes words in their order [text]
 * @param text the whole size, for refusals [text]
 * @returns the family, and the first word that names it [text]
 * @throws InputError "invalid": two shapes
 * @source common practice, no source
 */
export function shapeFamily(
  shapes: readonly string[],
  text: string,
): { readonly family: Family | "none"; readonly word: string } {
  const [single] = shapes;
  if (single !== undefined && shapes.length === 1) return { family: shapeWords.get(single) as Family, word: single };
  const named = shapes.map((word) => [word, shapeWords.get(word) as Family] as const);
  const telling = named.some(([, family]) => family !== "bar") ? named.filter(([, family]) => family !== "bar") : named;
  const families = [...new Set(telling.map(([, family]) => family))];
  const [only] = families;
  if (only === undefined) return { family: "none", word: text };
  const family =
    families.length === 1
      ? only
      : together.find(
          ([parts, meant]) =>
            families.every((f) => parts.includes(f)) &&
            (families.includes(meant) || (meant === "box" && families.some((f) => f === "tube" || f === "pipe"))),
        )?.[1];
  const distinct = [...new Set(telling.filter(([, f]) => f === family).map(([word]) => word))];
  if (family === undefined || (family === "rolled" && distinct.length > 1)) {
    const [first, second] = [...new Map(telling.map(([word, f]) => [f === "rolled" ? word : f, word])).values()];
    throw new InputError(
      "invalid",
      "section",
      'two shapes named ("{first}" and "{second}"); give one section per cell',
      { first: first!, second: second! },
    );
  }
  return { family, word: telling.find(([, f]) => f === family)?.[0] ?? telling[0]![0] };
}
