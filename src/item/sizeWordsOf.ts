import { otherShapes } from "../data/itemWords";
import { shapeWords } from "../data/sectionWords";
import type { Line } from "./item";
import { knownWord } from "./knownWord";

/** What is left of a line for the size. */
export interface SizeWords {
  /** Atoms that the size reader gets. */
  readonly atoms: readonly number[];
  /** The same and the words that nobody knows, to ask the size reader about them. */
  readonly withUnread: readonly number[];
  /** Words of shapes that the size reader cannot read: half round, rail. */
  readonly otherShape: string | undefined;
}

const signs: ReadonlySet<string> = new Set(['"', "'", "#", "-", "/"]);
const standing: ReadonlySet<string> = new Set(["-", "/"]);

/**
 * Sorts what the other readers left: words and numbers of the size, words that only fill, words that nobody knows.
 * @param line whose roles are filled in [-]
 * @returns atoms of the size, and a word that names another shape, if any [-]
 * @source common practice, no source
 */
export function sizeWordsOf(line: Line): SizeWords {
  const atoms: number[] = [];
  const withUnread: number[] = [];
  let otherShape: string | undefined;
  line.atoms.forEach(({ kind, text }, i) => {
    if (line.roles[i] !== "") return;
    const known = kindOf(line, i);
    if (kind === "word" && otherShapes.has(text)) otherShape = text;
    line.roles[i] = known === "size" ? "size" : known === "line" ? "read" : "unread";
    if (known === "size") atoms.push(i);
    if (known === "size" || (known === undefined && kind === "word")) withUnread.push(i);
  });
  return { atoms, withUnread, otherShape };
}

function kindOf(line: Line, i: number): "size" | "line" | undefined {
  const { kind, text } = line.atoms[i]!;
  if (isSeries(line, i)) return "size";
  if (text === "l" && !isAngle(line, i)) return undefined;
  if (kind === "word") return wordOf(text);
  if (kind === "mark") return signOf(line, i);
  return kind === "code" ? undefined : "size";
}

/** The letter that names a series: IPE A 300, HE 200 B. Left out, the line would silently be another beam. */
function isSeries({ atoms }: Line, i: number): boolean {
  const { text } = atoms[i]!;
  if (atoms[i - 1]?.text === "ipe") return /^(?:a|aa|o|v)$/.test(text) && atoms[i + 1]?.kind === "number";
  return atoms[i - 1]?.kind === "number" && atoms[i - 2]?.text === "he" && /^(?:a|aa|b|m|c)$/.test(text);
}

/** Beside another shape an L without its numbers is no angle. */
function isAngle({ atoms, roles }: Line, i: number): boolean {
  return (
    atoms[i + 1]?.kind === "number" ||
    !atoms.some(
      ({ kind, text }, k) =>
        k !== i &&
        ["", "size"].includes(roles[k]!) &&
        kind === "word" &&
        text.split(" ").some((word) => shapeWords.has(word) && word.length > 1),
    )
  );
}

/** German words have become several English ones. */
function wordOf(text: string): "size" | "line" | undefined {
  const known = text.split(" ").map(knownWord);
  return known.every((word) => word === "size") ? "size" : known.includes(undefined) ? undefined : "line";
}

/** A dash or slash at a distance parts; other signs say nothing. */
function signOf({ atoms }: Line, i: number): "size" | "line" | undefined {
  const { text, spaced } = atoms[i]!;
  if (!signs.has(text)) return /[:=.,@+#]/.test(text) ? "line" : undefined;
  return standing.has(text) && (spaced || atoms[i + 1]?.spaced !== false) ? "line" : "size";
}
