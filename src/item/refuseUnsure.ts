import { itemConstants as k } from "../data/itemConstants";
import { tableless } from "../data/itemWords";
import { shapeWords, tagWords, unitWords } from "../data/sectionWords";
import { InputError } from "../errors";
import { attemptField } from "./attemptField";
import type { Section } from "../section/section";
import { readLength } from "../size/readLength";
import type { Line } from "./item";
import { itemRefusal } from "./itemRefusal";
import { knownWord } from "./knownWord";
import type { OpenLine } from "./openLine";
import { textAt } from "./textAt";
import type { LineLength } from "./takeLength";

/**
 * The size of a line, unless something beside it may make it another one: goods and plastics; a word that nobody reads beside a solid whose
 * second number is well below the first, which may be the wall of a hollow bar; or such a word right beside the one number of the size.
 * @param open the line, with a word that names no metal bar [-]
 * @param line whose roles are filled in [-]
 * @param section as read [-]
 * @param length that the line gives beside it [text]
 * @param behind the same, where only an x or its place says that it is a length [text]
 * @returns the size, or the refusal naming the word [-]
 * @source common practice, no source
 */
export function refuseUnsure(
  { stop, series }: OpenLine,
  line: Line,
  section: Section | InputError,
  length: LineLength | InputError | undefined,
  behind?: LineLength,
): Section | InputError {
  if (stop !== undefined) return itemRefusal(stops[stop.kind], { word: stop.word });
  if (section instanceof InputError) return ofSeries(line, section, series);
  const other = otherReading(line, section, behind);
  if (other !== undefined) return other;
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

/** A size that may be another one: its first number is the length, or its second a wall. */
function otherReading(line: Line, section: Section, behind: LineLength | undefined): InputError | undefined {
  const { text } = section;
  const [first, second] = dimensionsOf(text);
  const lengthFirst = (): InputError =>
    itemRefusal("{size}, or is its first number the length? Write the length last, with its unit", { size: text });
  if (second !== undefined && first! > k.widestSides.value * second && isWide(line, text)) return lengthFirst();
  const mm = behind === undefined ? undefined : lengthIn(section, line, behind);
  if (mm === undefined) return undefined;
  if (mayBeWall(line, text, behind!.bare) && mm * k.leastInWalls.value <= first! && mm <= k.thickestWall.value)
    return itemRefusal("{size}, or hollow with that wall? Write the length with its word", { size: text });
  return mm < first! && isBeforeShape(line) ? lengthFirst() : undefined;
}

/** An angle, or an outline that no word calls so: Rohr 1000 x 88,9 x 5. */
const isWide = ({ atoms, roles }: Line, text: string): boolean =>
  text.startsWith("angle") ||
  (text.startsWith("box") &&
    !atoms.some(({ text: word }, i) => roles[i] === "size" && boxWords.has(word.split(" ")[0]!)));

/** Rund 80 x 6 is six metres long, or millimetres: there the length is refused. */
const mayBeWall = ({ units }: Line, text: string, bare: boolean): boolean =>
  /^(?:square|tube)/.test(text) || (text.startsWith("round") && !(bare && units === "metric"));

const boxWords: ReadonlySet<string> = new Set("rect rectangular box hss shs rhs square".split(" "));

/** 12" x 2" round: the shape right behind the number behind the x. */
function isBeforeShape({ atoms, roles }: Line): boolean {
  const x = atoms.reduce((last, { kind }, i) => (kind === "x" && roles[i] === "size" ? i : last), 0);
  let behind = x + 2;
  if (unitWords.has(textAt(atoms, behind))) behind += 1;
  const bound = atoms.some(({ text }, i) => i < x && shapeWords.has(text.split(" ")[0]!));
  return !bound && /^(?:round|rd|hex|square|sq)/.test(textAt(atoms, behind));
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
  return roles[i] === "unread" && kind === "word" && text.length > 1 && knownWord(text) === undefined;
}

/** A number of the size without a unit or a tag behind it. */
function isBare({ atoms, roles }: Line, i: number): boolean {
  const behind = atoms[i + 1]?.text ?? "";
  return atoms[i]?.kind === "number" && roles[i] === "size" && !unitWords.has(behind) && !tagWords.has(behind);
}

const isOneNumber = ({ atoms, roles }: Line): boolean =>
  atoms.filter(({ kind }, i) => kind === "number" && roles[i] === "size").length === 1;

/** A length below half of the size. */
function isShort(section: Section, line: Line, length: LineLength | InputError | undefined): boolean {
  if (length === undefined || length instanceof InputError) return false;
  const mm = lengthIn(section, line, length);
  return mm !== undefined && 2 * mm < Math.max(0, ...dimensionsOf(section.text));
}

/** A length beside a size [mm]. */
function lengthIn({ text }: Section, { units }: Line, length: LineLength): number | undefined {
  const mm = attemptField(() =>
    readLength(length.text, / mm/.test(text) ? "metric" : / in/.test(text) ? "inch" : units),
  );
  return mm instanceof InputError ? undefined : mm;
}

const inch = k.inch.value;

/** The dimensions that a canonical size prints [mm]. */
const dimensionsOf = (text: string): readonly number[] =>
  Array.from(text.matchAll(/([\d.]+) (in|mm|cm)/g), ([, n, unit]) => Number(n) * (unit === "in" ? inch : 1));
