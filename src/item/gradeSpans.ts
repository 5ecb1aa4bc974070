import { itemConstants as k } from "../data/itemConstants";
import { conditionWords, familyWords } from "../data/itemWords";
import { plainNames } from "../data/plainNames";
import { ignoredWords, shapeWords } from "../data/sectionWords";
import { compactDesignation } from "../material/compactDesignation";
import { materialIndex } from "../material/materialIndex";
import { isDimension } from "./isDimension";
import type { Atom, Line } from "./item";

/** Atoms that together are a designation. */
export interface GradeSpan {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  /** Holds a figure, or is an own name: a grade and no plain name such as brass. */
  readonly strong: boolean;
}

/**
 * The designations that stand in a line, the longest first at each place. Numbers that are dimensions are never part of one.
 * @param line with what is read already [-]
 * @param ownNames compact names of the materials of the shop block [text]
 * @returns spans in their order, none overlapping [-]
 * @source common practice, no source
 */
export function gradeSpans(line: Line, ownNames: ReadonlySet<string>): readonly GradeSpan[] {
  const spans: GradeSpan[] = [];
  const free = line.atoms.map((_, i) => isFree(line, i));
  for (let i = 0; i < free.length; i++) {
    const span = free[i]! ? longestAt(line, free, i, ownNames) : undefined;
    if (span === undefined) continue;
    spans.push(span);
    i = span.to;
  }
  return spans;
}

function isFree(line: Line, i: number): boolean {
  const { kind } = line.atoms[i]!;
  if (line.roles[i] !== "" || kind === "x") return false;
  return kind !== "number" || !isDimension(line, i);
}

function longestAt(
  { atoms, roles }: Line,
  free: readonly boolean[],
  from: number,
  ownNames: ReadonlySet<string>,
): GradeSpan | undefined {
  if (isNoBeginning(atoms, from)) return undefined;
  let end = from;
  while (end + 1 < atoms.length && end + 1 - from < k.longestDesignation.value && free[end + 1]!) end += 1;
  for (let to = end; to >= from; to--) {
    const span = atoms.slice(from, to + 1);
    const text = span
      .map(({ typed, spaced }, i) => (spaced && i > 0 ? ` ${typed}` : typed))
      .join("")
      .replace(/[()]/g, "");
    const form = compactDesignation(text);
    if (ownNames.has(form)) return { from, to, text, strong: true };
    const named = atoms[to]!.kind !== "mark" && (materialIndex().has(form) || plainNames.has(form));
    if (named && isLikely(span, roles[to + 1] === "" ? atoms[to + 1] : undefined))
      return { from, to, text, strong: /\d/.test(text) };
  }
  return undefined;
}

const isNoBeginning = (atoms: readonly Atom[], from: number): boolean =>
  atoms[from]!.kind === "mark" || isOtherDuplex(atoms, from);

/** Super duplex and lean duplex are other steels than duplex, with a dash between or without. */
function isOtherDuplex(atoms: readonly Atom[], i: number): boolean {
  const before = atoms[i - 1]?.kind === "mark" ? atoms[i - 2] : atoms[i - 1];
  return atoms[i]!.text === "duplex" && before !== undefined && otherDuplex.has(before.text);
}

const otherDuplex: ReadonlySet<string> = new Set(["super", "lean", "hyper"]);

function isLikely(span: readonly Atom[], next: Atom | undefined): boolean {
  const [first] = span;
  // 310UC96: joined to the word of a series.
  if (span.length === 1 && first!.kind === "number")
    return isGradeNumber(first!.text) && !(next !== undefined && !next.spaced && shapeWords.has(next.text));
  if (span.length > 1 && !isJoined(span, next)) return false;
  return span.some(({ typed }) => /\d/.test(typed)) || isPlainName(span);
}

/** 17 4 is two numbers; 80 a is no grade 80A; in 316 L 2x2x1/4 the L is an angle. */
function isJoined(span: readonly Atom[], next: Atom | undefined): boolean {
  const [first, last] = [span[0]!, span[span.length - 1]!];
  if (first.kind === "number" && (span.every(({ kind }) => kind === "number") || !/^\d{3}|\d\.\d/.test(first.text)))
    return false;
  return !(last.text.length === 1 && shapeWords.has(last.text) && next?.kind === "number");
}

/** Whole numbers as grades are written, 4140 and 52100, and material numbers, 1.4301. */
function isGradeNumber(text: string): boolean {
  return /^\d{3,5}$/.test(text) || /^\d[.,]\d{4}$/.test(text);
}

/** Hot rolled and the like only say how the bar was made; HSS is the hollow section; steel alone is no grade. */
function isPlainName(span: readonly Atom[]): boolean {
  const first = span[0]!.text;
  if (first === "steel" || first === "hss") return false;
  if (familyWords.has(first)) return true;
  const made = span.every(({ text }) => (ignoredWords.has(text) && !namesSteel.has(text)) || conditionWords.has(text));
  return !made && span.map(({ typed }) => typed).join("").length >= k.shortestPlainName.value;
}

const namesSteel: ReadonlySet<string> = new Set(["dom", "hrs", "crs"]);
