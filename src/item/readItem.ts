import { itemConstants as k } from "../data/itemConstants";
import { InputError } from "../errors";
import { materialIndex } from "../material/materialIndex";
import { findMaterial } from "../material/findMaterial";
import type { Material } from "../material/material";
import { compactDesignation } from "../material/compactDesignation";
import type { Units } from "../quantities";
import { normaliseSize } from "../size/normaliseSize";
import { readSection } from "../section/readSection";
import type { Section } from "../section/section";
import { spoiledText } from "../size/spoiledText";
import { familyWords, gradeMarks, randomWords } from "../data/itemWords";
import { attemptField } from "./attemptField";
import type { Item, Line } from "./item";
import { itemAtoms } from "./itemAtoms";
import { itemRefusal } from "./itemRefusal";
import { lengthOf } from "./lengthOf";
import { takeLength } from "./takeLength";
import { takeMaterial, type LineMaterial } from "./takeMaterial";
import { takeQuantity } from "./takeQuantity";
import { takeReferences } from "./takeReferences";
import { takeSize, type LineSize } from "./takeSize";

// Made once: most lines lack one of them, and an error takes its time.
const noQuantity = itemRefusal("the line gives no quantity");
const noLength = itemRefusal("the line gives no length");
const noLengthTold = itemRefusal("the line gives no length that can be told from its size");

/**
 * Reads one description cell of an order list: size, material, length, quantity, and the words not read, in any order of words. Size,
 * length and material are read by the readers of those. Every field is certain, or refused alone with the candidates: a number that
 * fits nowhere refuses what it may belong to.
 * @param description as it stands in the cell [text]
 * @param units unit of bare numbers [text]
 * @param own materials of the shop block [-]
 * @returns the fields; length [mm], quantity [-]
 * @throws InputError "invalid": an empty cell, a date, an error value, more than 200 characters
 * @source common practice, no source
 */
export function readItem(description: string | number, units: Units, own: readonly Material[]): Item {
  if (typeof description === "number") return numberItem(description, units, own);
  refuseLine(description);
  const atoms = itemAtoms(description);
  const line: Line = { atoms, roles: atoms.map(() => ""), units };
  const random = atoms.some(({ text }) => randomWords.has(text));
  takeReferences(line);
  const quantity = takeQuantity(line);
  const named = takeLength(line);
  const material = takeMaterial(line, own);
  const size = takeSize(line, { length: named === undefined, quantity: quantity === undefined });
  const section = sizeOf(line, size, material);
  const said = named ?? size.length;
  const loose = said === undefined ? looseNumber(line, material) : undefined;
  const counted = quantity ?? size.quantity;
  const told = said ?? loose ?? missingLength(size, counted);
  const length =
    told instanceof InputError ? told : lengthOf(told, section, named === undefined ? size.units : units, random);
  const grade = isOpenGrade(size, section, material) ? section : (loose ?? material.grade);
  return item(section, grade, length, counted ?? noQuantity, unreadOf(line));
}

/** A number that may be the quantity or the length refuses both. */
function missingLength({ section }: LineSize, quantity: number | InputError | undefined): InputError {
  if (quantity instanceof InputError && "count" in quantity.facts) return quantity;
  return section instanceof InputError ? noLengthTold : noLength;
}

function item(
  section: Section | InputError,
  grade: Material | InputError,
  length: number | InputError,
  quantity: number | InputError,
  unread: string,
): Item {
  return {
    size: section instanceof InputError ? section : section.text,
    section,
    material: grade instanceof InputError ? grade : grade.name,
    grade,
    length,
    quantity,
    unread,
  };
}

function refuseLine(description: string): void {
  if (description.length > k.longestLine.value)
    throw new InputError("invalid", "item", "a description has at most {longest} characters", {
      longest: String(k.longestLine.value),
    });
  const plain = normaliseSize(description);
  if (plain === "") throw new InputError("invalid", "item", 'no description given; for example "4140 round 3 x 12 ft"');
  const spoiled = spoiledText(plain);
  if (spoiled === "error")
    throw new InputError("invalid", "item", "the cell holds the Excel error {error}", { error: plain.toUpperCase() });
  // 65-45-12 is a ductile iron.
  if (spoiled === "date" && !materialIndex.has(compactDesignation(plain)))
    throw new InputError(
      "invalid",
      "item",
      '"{text}" is a date: Excel has changed a fraction such as 3/4. Format the cell as Text and type it again',
      { text: description.trim() },
    );
}

/** A number alone can be a grade, as in a column of materials; it is never a size. */
function numberItem(number: number, units: Units, own: readonly Material[]): Item {
  const none = (field: string): InputError =>
    itemRefusal("{number} is only a number: the line gives no {field}", { number: String(number), field });
  return item(
    attemptField(() => readSection(number, units)),
    attemptField(() => findMaterial(number, own)),
    none("length"),
    none("quantity"),
    "",
  );
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

/** The size, unless a code may belong to it, or the one number of the line may be size or grade. */
function sizeOf(line: Line, { section }: LineSize, { unknown, numbers }: LineMaterial): Section | InputError {
  if (!(section instanceof InputError))
    return unknown.length === 0
      ? section
      : itemRefusal("{code} is not known; it may belong to the size", { code: unknown[0]! });
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

function unreadOf({ atoms, roles }: Line): string {
  return atoms
    .flatMap(({ typed, spaced }, i) =>
      roles[i] === "unread" ? [spaced || roles[i - 1] !== "unread" ? ` ${typed}` : typed] : [],
    )
    .join("")
    .trim();
}
