import { shapeWords, tagWords, unitWords } from "../data/sectionWords";
import { InputError } from "../errors";
import type { Units } from "../quantities";
import { readLength } from "../size/readLength";
import { readSection } from "../section/readSection";
import type { Section } from "../section/section";
import { attemptField } from "./attemptField";
import type { Atom, Line } from "./item";
import { itemRefusal } from "./itemRefusal";
import { sizeReadings, type SizeReading } from "./sizeReadings";
import { sizeWordsOf } from "./sizeWordsOf";
import type { LineLength } from "./takeLength";

/** What the rest of the line says: the size, and the length or quantity that stands beside it without a word. */
export interface LineSize {
  readonly section: Section | InputError;
  readonly length: LineLength | undefined;
  /** The refusal where the number in front may be a length, too. */
  readonly quantity: number | InputError | undefined;
  /** Unit of a bare length: that of the size where one is written. */
  readonly units: Units;
}

type Open = Readonly<Record<"length" | "quantity", boolean>>;

/**
 * Reads the size from what the other readers left of a line, and tells it from a length behind an x and from a number in front.
 * @param line whose roles are filled in [-]
 * @param open which of length and quantity nothing has named yet [-]
 * @returns the size or its refusal, and a length [text] or quantity [-] found beside it
 * @source common practice, no source
 */
export function takeSize(line: Line, open: Open): LineSize {
  const { atoms, withUnread, otherShape } = sizeWordsOf(line);
  const { units } = line;
  const written = unitsOf(line, atoms) ?? units;
  const done = (section: Section | InputError): LineSize => ({
    section,
    length: undefined,
    quantity: undefined,
    units: written,
  });
  if (otherShape !== undefined)
    return done(itemRefusal('"{word}" names a shape that sizes do not know', { word: otherShape }));
  const readings = sizeReadings(walledRound(line, atoms, open), atoms, units);
  if (readings instanceof InputError) return done(withoutUnread(line, withUnread, readings));
  const [only, second] = readings;
  // 3.5 (3-1/2): the size twice.
  if (second !== undefined && readings.every(({ section, behindX }) => !behindX && section.text === only!.section.text))
    return done(only!.section);
  if (second !== undefined)
    return done(
      itemRefusal("the size may be {first} or {second}", { first: only!.section.text, second: second.section.text }),
    );
  if (only!.left.length > 0 && isOpenFlat(line, atoms, only!, written)) return done(whichIsLength(line, atoms));
  return (
    beside(line, only!, written, open) ??
    done(
      itemRefusal("{number} is neither size, length nor quantity beside {size}", {
        number: textOf(line, only!.left),
        size: only!.section.text,
      }),
    )
  );
}

/** Ø63.5 x 3.66 thick, with a length or a schedule: a tube. A disc has neither. */
function walledRound({ atoms }: Line, indices: readonly number[], open: Open): readonly Atom[] {
  const words = indices.map((i) => atoms[i]!.text);
  const at = indices.find((i) => atoms[i]!.text === "dia");
  const shaped = indices.some((i) => shapeWords.has(atoms[i]!.text.split(" ")[0]!) && atoms[i]!.text !== "dia");
  const walled = words.some((word) => tagWords.get(word) === "wall");
  if (at === undefined || shaped || !walled || (open.length && !words.includes("sch"))) return atoms;
  return atoms.map((atom, i) => (i === at ? { ...atom, text: "tube" } : atom));
}

const whichIsLength = (line: Line, atoms: readonly number[]): InputError =>
  itemRefusal("{sizes}: which of the three is the length? Write the size first and the length last, with its unit", {
    sizes: numbersOf(line, atoms)
      .map((i) => line.atoms[i]!.text)
      .join(" x "),
  });

const textOf = ({ atoms }: Line, indices: readonly number[]): string =>
  indices
    .filter((i) => atoms[i]!.kind !== "x" && atoms[i]!.text !== "by")
    .map((i) => atoms[i]!.text)
    .join(" ");
const numbersOf = ({ atoms }: Line, indices: readonly number[]): readonly number[] =>
  indices.filter((i) => atoms[i]!.kind === "number");

function unitsOf({ atoms }: Line, indices: readonly number[]): Units | undefined {
  const units = new Set(
    indices.map((i) => unitWords.get(atoms[i]!.text)).filter((unit) => unit === "in" || unit === "mm" || unit === "cm"),
  );
  if (units.size === 0) return undefined;
  return units.has("in") ? (units.size === 1 ? "inch" : undefined) : "metric";
}

/** The size reader says more of a word that it does not know, where that word may be the shape misspelt. */
function withoutUnread(line: Line, indices: readonly number[], refusal: InputError): InputError {
  if (indices.every((i) => line.roles[i] !== "unread") || numbersOf(line, indices).length === 0) return refusal;
  const asked = attemptField(() => readSection(indices.map((i) => line.atoms[i]!.text).join(" "), line.units));
  return asked instanceof InputError ? asked : refusal;
}

/** A flat of three numbers whose last is not the largest: any of them may be the length. */
function isOpenFlat(line: Line, indices: readonly number[], { section, left }: SizeReading, units: Units): boolean {
  if (!section.text.startsWith("flat")) return false;
  const mm = numbersOf(line, indices).map((i) => attemptField(() => readLength(line.atoms[i]!.text, units)));
  const last = mm[numbersOf(line, indices).indexOf(numbersOf(line, left).slice(-1)[0]!)];
  return mm.some(
    (value) => value instanceof InputError || last === undefined || last instanceof InputError || value > last,
  );
}

/** The numbers left out of the size, as length and quantity; undefined where one of them is neither. */
function beside(line: Line, { section, left, behindX }: SizeReading, units: Units, open: Open): LineSize | undefined {
  const none: LineSize = { section, length: undefined, quantity: undefined, units };
  if (left.length === 0) return none;
  const numbers = numbersOf(line, left);
  const last = numbers[numbers.length - 1]!;
  const united = left[left.length - 1] !== last;
  const measured = behindX || (united && numbers.length === 1);
  const length = measured ? lengthFrom(line, left.slice(left.indexOf(last))) : undefined;
  const [front, ...others] = measured ? numbers.slice(0, -1) : numbers;
  if (others.length > 0 || (length !== undefined && !open.length)) return undefined;
  if (front === undefined) return { ...none, length };
  if (!open.quantity || !isFront(line, front)) return undefined;
  return { ...none, length, quantity: countFrom(line.atoms[front]!.text, open, length) };
}

/** 6000 IPE 200, 240 round 3: where the line gives no length, a count from here up may be one. */
const mayBeLength = 100;

function countFrom(text: string, open: Open, length: LineLength | undefined): number | InputError {
  return open.length && length === undefined && Number(text) >= mayBeLength
    ? itemRefusal("{count} may be the quantity or a length; write for example qty {count}", { count: text })
    : Number(text);
}

function lengthFrom(line: Line, indices: readonly number[]): LineLength {
  const text = textOf(line, indices);
  return { text, bare: indices.length === 1 && !text.includes("/") };
}

/** 2 W12x50: a bare whole number that opens the line; 3 to and 2 Paletten count something else. */
function isFront({ atoms, roles }: Line, i: number): boolean {
  const counted = atoms[1]?.kind === "word" && (roles[1] === "unread" || atoms[1].text === "to");
  // 1. Rund 60: the number of the line.
  const numbered = atoms[0]!.typed.endsWith(".");
  return i === 0 && !counted && !numbered && /^\d{1,4}$/.test(atoms[0]!.text) && atoms[0]!.text !== "0";
}
