import { itemConstants as k } from "../data/itemConstants";
import { tableless } from "../data/itemWords";
import { tagWords, unitWords } from "../data/sectionWords";
import { InputError } from "../errors";
import { attemptField } from "./attemptField";
import type { Section } from "../section/section";
import { readLength } from "../size/readLength";
import type { Line } from "./item";
import { itemRefusal } from "./itemRefusal";
import { knownWord } from "./knownWord";
import type { OpenLine } from "./openLine";
import type { LineLength } from "./takeLength";

/**
 * The size of a line, unless something beside it may make it another one: goods and plastics; a word that nobody reads beside a solid whose
 * second number is well below the first, which may be the wall of a hollow bar; or such a word right beside the one number of the size.
 * @param open the line, with a word that names no metal bar [-]
 * @param line whose roles are filled in [-]
 * @param section as read [-]
 * @param length that the line gives beside it [text]
 * @returns the size, or the refusal naming the word [-]
 * @source common practice, no source
 */
export function refuseUnsure(
  { stop, series }: OpenLine,
  line: Line,
  section: Section | InputError,
  length: LineLength | InputError | undefined,
): Section | InputError {
  if (stop !== undefined) return itemRefusal(stops[stop.kind], { word: stop.word });
  if (section instanceof InputError) return ofSeries(line, section, series);
  if (section.pieceArea > k.largestUnwritten.value && !isUnited(line))
    return itemRefusal("{size} is larger than any bar: write its unit", { size: section.text });
  const words = line.atoms.flatMap((_, i) => (isUnread(line, i) ? [i] : []));
  const [first] = words;
  if (first === undefined) return section;
  const beside = words.find((i) => isBare(line, i - 1) || isBare(line, i + 1));
  if (beside !== undefined && isOneNumber(line))
    return itemRefusal('"{word}" is not read, and the number beside it may belong to it', {
      word: typed(line, beside),
    });
  if (!section.hollow && isShort(section, line, length))
    return itemRefusal('"{word}" is not read: {size}, or hollow with that wall?', {
      word: typed(line, first),
      size: section.text,
    });
  return section;
}

/** A series without a table is named. */
function ofSeries(line: Line, section: InputError, series: string | undefined): InputError {
  const named = line.atoms.find(({ text }) => tableless.has(text))?.typed ?? (isSeries(line) ? series : undefined);
  return named === undefined ? section : itemRefusal("{series} is a series whose table is not here", { series: named });
}

/** A channel or beam by a number alone. */
const isSeries = ({ atoms, roles }: Line): boolean =>
  atoms.some(({ text }, i) => roles[i] === "size" && (text === "u" || text === "beam"));

const stops = {
  goods: 'no metal bar: "{word}" names goods',
  "not metal": 'not a metal bar: "{word}"',
  "other shape": '"{word}" names a shape that sizes do not know',
} as const;

const typed = ({ atoms }: Line, i: number): string => atoms[i]!.typed;

/** A unit stands behind a number of the line. */
const isUnited = ({ atoms }: Line): boolean =>
  atoms.some(
    ({ kind }, i) => kind === "number" && /^(?:in|mm|cm)$/.test(unitWords.get(atoms[i + 1]?.text ?? "") ?? ""),
  );

/** A word, of more than one letter, that no reader knows. */
function isUnread({ atoms, roles }: Line, i: number): boolean {
  const { kind, text } = atoms[i]!;
  return (
    roles[i] === "unread" &&
    (kind === "word" || (kind === "mark" && /\p{L}/u.test(text))) &&
    text.length > 1 &&
    knownWord(text) === undefined
  );
}

/** A number of the size without a unit or a tag behind it. */
function isBare({ atoms, roles }: Line, i: number): boolean {
  const behind = atoms[i + 1]?.text ?? "";
  return atoms[i]?.kind === "number" && roles[i] === "size" && !unitWords.has(behind) && !tagWords.has(behind);
}

const isOneNumber = ({ atoms, roles }: Line): boolean =>
  atoms.filter(({ kind }, i) => kind === "number" && roles[i] === "size").length === 1;

/** A length below half of the size. */
function isShort({ text }: Section, { units }: Line, length: LineLength | InputError | undefined): boolean {
  if (length === undefined || length instanceof InputError) return false;
  const mm = attemptField(() =>
    readLength(length.text, / mm/.test(text) ? "metric" : / in/.test(text) ? "inch" : units),
  );
  return !(mm instanceof InputError) && 2 * mm < widest(text);
}

const inch = k.inch.value;

/** The largest dimension that a canonical size prints [mm]. */
function widest(text: string): number {
  return Math.max(
    0,
    ...Array.from(text.matchAll(/([\d.]+) (in|mm|cm)/g), ([, n, unit]) => Number(n) * (unit === "in" ? inch : 1)),
  );
}
