import { InputError } from "../errors";
import type { Material } from "../material/material";
import type { Units } from "../quantities";
import { readSection } from "../section/readSection";
import type { Section } from "../section/section";
import { familyWords, gradeMarks, randomWords } from "../data/itemWords";
import { materialIndex } from "../material/materialIndex";
import { attemptField } from "./attemptField";
import type { Item, Line } from "./item";
import { itemOf } from "./itemOf";
import { itemRefusal } from "./itemRefusal";
import { lengthOf } from "./lengthOf";
import type { OpenLine } from "./openLine";
import { refuseUnsure } from "./refuseUnsure";
import { takeLength, type LineLength } from "./takeLength";
import { takeMaterial, type LineMaterial } from "./takeMaterial";
import { takeQuantity } from "./takeQuantity";
import { takeReferences } from "./takeReferences";
import { takeSize, type LineSize } from "./takeSize";
import { textAt } from "./textAt";

// Made once: most lines lack one of them, and an error takes its time.
const noQuantity = itemRefusal("the line gives no quantity");
const noLength = itemRefusal("the line gives no length");
const noLengthTold = itemRefusal("the line gives no length that can be told from its size");

/** Unit of bare numbers, and what decided it. */
export interface BareUnit {
  readonly units: Units;
  /** The line writes it; it is given; the line's words speak for it; nothing decides, and the line is read in both. */
  readonly from: "line" | "given" | "words" | "both";
  /** The line writes both units. */
  readonly mixed: boolean;
  readonly given: Units | undefined;
}

/**
 * Reads a line whose bare numbers have one unit: references, quantity, length, material and size, each taken out of what the ones before left.
 * @param open the line in plain English atoms [-]
 * @param bare unit of bare numbers [text]
 * @param own materials of the shop block [-]
 * @returns the fields; length [mm], quantity [-]
 * @source common practice, no source
 */
export function readLine(open: OpenLine, bare: BareUnit, own: readonly Material[]): Item {
  const { units } = bare;
  const line: Line = { atoms: open.atoms, roles: open.atoms.map(() => ""), units };
  const random = open.atoms.some(({ text }) => randomWords.has(text));
  takeReferences(line);
  const quantity = takeQuantity(line);
  const named = takeLength(line);
  const material = takeMaterial(line, own);
  const size = takeSize(line, { length: named === undefined, quantity: quantity === undefined });
  const sized = sizeOf(line, size, material);
  const section = refuseUnsure(open, line, sized, size.length ?? named, size.length);
  const said = saidLength(open, line, section, named, size);
  const loose = said === undefined ? looseNumber(line, material) : undefined;
  const counted = quantity ?? size.quantity;
  const told = said ?? loose ?? missingLength(size, counted);
  const length = measured(told, section, named === undefined ? size.units : units, random, bare);
  const grade = loose ?? gradeBeside(open, section, material);
  const notes = notesOf(bare, section, material, told);
  const decided = isOpenGrade(size, sized, material) ? sized : grade;
  return itemOf({ section, grade: decided, length, quantity: counted ?? noQuantity, unread: unreadOf(line), notes });
}

const measured = (
  told: LineLength | InputError,
  section: Section | InputError,
  units: Units,
  random: boolean,
  bare: BareUnit,
): number | InputError => (told instanceof InputError ? told : lengthOf(told, section, units, random, isTorn(bare)));

/** The length that the line says; what only its place beside a size made a length is refused with that size. */
function saidLength(
  open: OpenLine,
  line: Line,
  section: Section | InputError,
  named: LineLength | InputError | undefined,
  size: LineSize,
): LineLength | InputError | undefined {
  const refused = section instanceof InputError;
  return oddLength(open) ?? (refused && isFollowed(line) ? noLengthTold : named) ?? (refused ? undefined : size.length);
}

/** 12' cut into 6 pieces, max 8"; 2 m 350, 1 ft 6, length 6", 8": beside a size that is refused, the number right behind the length may belong to it. */
function isFollowed({ atoms, roles }: Line): boolean {
  const next = roles.lastIndexOf("length") + 1;
  if (atoms.some(({ text }) => text === "into" || text === "max")) return true;
  return next > 0 && atoms[next]?.kind === "number" && roles[next] === "size";
}

/** Beside goods a plain name says nothing of a bar. */
const gradeBeside = (
  { stop }: OpenLine,
  section: Section | InputError,
  { grade, note }: LineMaterial,
): Material | InputError =>
  section instanceof InputError && stop !== undefined && note.startsWith("plain name") ? section : grade;

/** Brackets hold another measure than stands before them. */
const oddLength = ({ odd }: OpenLine): InputError | undefined =>
  odd === undefined ? undefined : itemRefusal("{odd} is not what stands before it", { odd: odd.trim() });

/** What was assumed: the unit of numbers that have none, and what the readers of size and grade say. */
function notesOf(
  { units, from }: BareUnit,
  section: Section | InputError,
  { note }: LineMaterial,
  length: LineLength | InputError,
): readonly string[] {
  const said = section instanceof InputError ? [] : section.note.split(", ").slice(1);
  const bare = said.some((part) => part.endsWith(" assumed")) || (!(length instanceof InputError) && length.bare);
  const unit = units === "inch" ? "inches" : "millimetres";
  const sources = {
    line: `${unit}, as the line writes`,
    given: `${unit}, as given`,
    words: `${unit}, as its words and grade are used`,
    both: `${unit}: impossible in the other unit`,
  };
  return [...(bare ? [sources[from]] : []), ...said.filter((part) => !part.endsWith(" assumed")), note].filter(
    (part) => part !== "",
  );
}

/** Both units are written, or the size in inches and millimetres given: a length without a unit may be either. */
const isTorn = ({ mixed, from, units, given }: BareUnit): boolean =>
  mixed || (from === "line" && units === "inch" && given === "metric");

/** A number that may be the quantity or the length refuses both. */
function missingLength({ section }: LineSize, quantity: number | InputError | undefined): InputError {
  if (quantity instanceof InputError && "count" in quantity.facts) return quantity;
  return section instanceof InputError ? noLengthTold : noLength;
}

/** Rund 50 410: in millimetres a bare number of three figures behind the size may be a length as well as a grade, unless a word says which. */
function looseNumber({ atoms, roles, units }: Line, { numbers }: LineMaterial): InputError | undefined {
  const number = numbers.find(
    (i) => /^\d{3}$/.test(atoms[i]!.text) && roles.indexOf("size") >= 0 && roles.indexOf("size") < i,
  );
  const said = atoms.some(
    ({ kind, text }) => kind === "word" && text.length > 1 && (familyWords.has(text) || gradeMarks.has(text)),
  );
  if (units === "inch" || number === undefined || said) return undefined;
  return itemRefusal("{number} may be the grade or a length: write AISI {number} or {number} mm", {
    number: atoms[number]!.text,
  });
}

/** The size was read, but the code or number that it may share with the grade refuses it: both are open. */
function isOpenGrade(size: LineSize, section: Section | InputError, { unknown }: LineMaterial): section is InputError {
  return unknown.length === 0 && section instanceof InputError && section !== size.section;
}

/** A letter with its number, or a number with its letter, may be a thread, a bar number or a series; longer codes are grades and part numbers. */
const maySize = /^[a-z]\d{1,2}$|^\d+[a-z]?$|\dx\d/;

/** The size, unless a code may belong to it, or the one number of the line may be size or grade. */
function sizeOf(line: Line, { section }: LineSize, material: LineMaterial): Section | InputError {
  const { unknown, numbers } = material;
  if (!(section instanceof InputError)) {
    const open = unknown.find((code) => maySize.test(code));
    if (open === undefined) return mayBeGrade(line, section, material);
    return itemRefusal("{code} is not known; it may belong to the size", { code: open });
  }
  const sized = line.atoms.some(({ kind }, i) => kind === "number" && line.roles[i] === "size");
  const [number] = numbers;
  if (sized || number === undefined) return section;
  const words = line.atoms.flatMap(({ text }, i) => (line.roles[i] === "size" || i === number ? [text] : []));
  const other = attemptField(() => readSection(words.join(" "), line.units));
  return other instanceof InputError
    ? section
    : itemRefusal("{number} may be the grade or the size: write for example {size}", {
        number: line.atoms[number]!.text,
        size: other.text,
      });
}

/** Round 316 x 25: the one number that may be a grade, in a line that names none. */
function mayBeGrade({ atoms, roles }: Line, section: Section, { grade }: LineMaterial): Section | InputError {
  const i = atoms.findIndex(({ kind }, at) => kind === "number" && roles[at] === "size");
  const number = textAt(atoms, i);
  const bound = textAt(atoms, i - 1) === "dia" || textAt(atoms, i + 1) !== "x" || !(grade instanceof InputError);
  if (bound || !/^\d{3}$/.test(number) || !/^(?:round|square|hex)/.test(section.text) || !materialIndex().has(number))
    return section;
  return itemRefusal("{number} may be the grade or the size: write AISI {number} or {number} mm", { number });
}

function unreadOf({ atoms, roles }: Line): string {
  return atoms
    .flatMap(({ typed, spaced }, i) =>
      roles[i] === "unread" ? [spaced || roles[i - 1] !== "unread" ? ` ${typed}` : typed] : [],
    )
    .join("")
    .trim();
}
