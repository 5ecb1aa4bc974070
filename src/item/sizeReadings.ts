import { itemConstants as k } from "../data/itemConstants";
import { unitWords } from "../data/sectionWords";
import { InputError } from "../errors";
import type { Units } from "../quantities";
import { readSection } from "../section/readSection";
import type { Section } from "../section/section";
import { attemptField } from "./attemptField";
import type { Atom } from "./item";

/** One way to read what is left of a line: the size, and the number that is then no part of it. */
export interface SizeReading {
  readonly section: Section;
  /** Atoms left out of the size: a length behind an x, or a number that stands apart. */
  readonly left: readonly number[];
  readonly behindX: boolean;
}

/**
 * The ways in which the size reader takes the atoms of a size: whole; else without the last number behind an x; else without one
 * of the numbers that stand apart. Several answers leave the line open.
 * @param atoms of the line [-]
 * @param indices of those that are left for the size [-]
 * @param units of bare numbers [text]
 * @returns readings, or the size reader's refusal where there is none [-]
 * @source common practice, no source
 */
export function sizeReadings(
  atoms: readonly Atom[],
  indices: readonly number[],
  units: Units,
): readonly SizeReading[] | InputError {
  const read = (left: readonly number[], behindX: boolean, joined?: number): SizeReading | InputError => {
    const kept = indices.filter((i) => !left.includes(i));
    const unit = left.map((i) => unitWords.get(atoms[i]!.text)).find((found) => found !== undefined);
    const section = attemptField(() =>
      readSection(
        textOf(atoms, kept, joined),
        behindX && unit !== undefined ? (unit === "in" ? "inch" : "metric") : units,
      ),
    );
    return section instanceof InputError ? section : { section, left, behindX };
  };
  const whole = read([], false);
  if (!(whole instanceof InputError)) return [whole];
  const groups = groupsOf(atoms, indices);
  if (groups.length === 0 || groups.length > k.mostNumberGroups.value) return whole;
  const tail = lastBehindX(atoms, indices);
  const walled = withWall(atoms, indices, groups, read, whole);
  if (walled !== undefined) return walled;
  const stripped = tail === undefined ? [] : [read(tail, true)];
  const apart = groups.length === 1 ? [] : groups.map((group) => read(group, false));
  const found = [...stripped, ...apart].filter(isReading);
  const bound = found.filter(
    ({ left, behindX }) => !left.some((i) => isBound(atoms, i) || (!behindX && atoms[i]!.kind === "x")),
  );
  if (found.length > 0) return likely(bound.length > 0 ? bound : found);
  // 2 flat 6x1x12: a number in front, and a length behind the x.
  const both = tail === undefined || groups.length === 1 ? whole : read([...groups[0]!, ...tail], true);
  return both instanceof InputError ? whole : [both];
}

/** Ø50, AF 24: the sign says that the number is the size. */
const isBound = (atoms: readonly Atom[], i: number): boolean =>
  atoms[i]!.kind === "number" && (atoms[i - 1]?.text === "dia" || atoms[i - 1]?.text === "af");

const boxWords: ReadonlySet<string> = new Set(["box", "square", "rect", "shs", "rhs", "rectangular"]);

/** Box 40x20 2 mm: both sides, and apart from them the wall, with its unit. Refused where it may be the length of a solid, too. */
function withWall(
  atoms: readonly Atom[],
  indices: readonly number[],
  groups: readonly (readonly number[])[],
  read: (left: readonly number[], behindX: boolean, joined?: number) => SizeReading | InputError,
  whole: InputError,
): readonly SizeReading[] | InputError | undefined {
  const [sides, wall, ...others] = groups;
  const isWall = wall !== undefined && others.length === 0 && wall.length === 2 && atoms[wall[1]!]!.text === "mm";
  if (!isWall || sides!.filter((i) => atoms[i]!.kind === "number").length !== 2) return undefined;
  const words = indices.flatMap((i) => atoms[i]!.text.split(" "));
  if (!words.some((word) => boxWords.has(word))) return undefined;
  const found = read([], false, wall[0]);
  if (!(found instanceof InputError) && found.section.hollow) return [found];
  const box = attemptField(() => readSection(`box ${textOf(atoms, [...sides!, ...wall], wall[0])}`, "metric"));
  return box instanceof InputError ? undefined : whole;
}

const isReading = (reading: SizeReading | InputError): reading is SizeReading => !(reading instanceof InputError);

/** A number that would make a bar of half a square metre or more is no size where another can be. */
function likely(readings: readonly SizeReading[]): readonly SizeReading[] {
  const small = readings.filter(({ section }) => section.pieceArea < k.largestBarArea.value);
  return small.length === 0 ? readings : small;
}

/** The atoms as the size reader gets them; where something was taken out between two, a comma keeps them apart. */
function textOf(atoms: readonly Atom[], indices: readonly number[], joined?: number): string {
  return indices
    .map(
      (i, k) =>
        `${i === joined ? " x " : k === 0 ? "" : indices[k - 1] !== i - 1 ? ", " : atoms[i]!.spaced ? " " : ""}${atoms[i]!.text}`,
    )
    .join("");
}

const isJoint = ({ kind, text }: Atom): boolean => kind === "x" || text === "by" || text === "-";

/** Numbers joined by x, each with the unit behind it: runs that stand apart. */
function groupsOf(atoms: readonly Atom[], indices: readonly number[]): readonly (readonly number[])[] {
  const groups: number[][] = [];
  let joined = false;
  for (const i of indices) {
    const atom = atoms[i]!;
    const last = groups[groups.length - 1];
    const isNumber = atom.kind === "number";
    if (last === undefined || (isNumber && !joined)) {
      if (isNumber) groups.push([i]);
    } else if (isNumber || isJoint(atom) || isUnit(atom)) last.push(i);
    joined = isJoint(atom) || (joined && !isNumber);
  }
  return groups;
}

/** One letter is rather a shape. */
const isUnit = ({ text }: Atom): boolean => unitWords.has(text) && (text.length > 1 || /[^a-z]/.test(text));

/** The last x with its number and unit, where no other number stands behind. */
function lastBehindX(atoms: readonly Atom[], indices: readonly number[]): readonly number[] | undefined {
  const numbers = indices.filter((i) => atoms[i]!.kind === "number");
  const last = numbers[numbers.length - 1]!;
  const at = indices.indexOf(last);
  const x = indices[at - 1];
  if (x === undefined || (atoms[x]!.kind !== "x" && atoms[x]!.text !== "by")) return undefined;
  const unit = indices[at + 1];
  const united = unit !== undefined && ["in", "mm", "cm"].includes(unitWords.get(atoms[unit]!.text) ?? "");
  return united ? [x, last, unit] : [x, last];
}
