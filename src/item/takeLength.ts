import { lengthLabels, lengthTails, longUnits, randomWords } from "../data/itemWords";
import { shapeWords, tagWords, unitWords } from "../data/sectionWords";
import { InputError } from "../errors";
import { materialIndex } from "../material/materialIndex";
import { attemptField } from "./attemptField";
import type { Atom, Line } from "./item";
import { itemRefusal } from "./itemRefusal";
import { lengthBetween, lengthRange } from "./lengthRange";
import { readLength } from "../size/readLength";
import { textAt } from "./textAt";

/** A length as the line has it: its words, and whether a unit is written. */
export interface LineLength {
  readonly text: string;
  readonly bare: boolean;
}

interface Span extends LineLength {
  readonly from: number;
  readonly to: number;
}

const cuts: ReadonlySet<string> = new Set(["cut", "saw", "sawn", "zuschnitt", "zugeschnitten", "gesägt"]);
/** Behind these stands the length of the bar, not of the piece. */
const stockWords: ReadonlySet<string> = new Set(["from", "ex", "aus"]);
const dashes: ReadonlySet<string> = new Set(["-", "/"]);
const marks: ReadonlySet<string> = new Set([":", "="]);

/**
 * Takes the length of a piece out of a line where a unit or a word names it: x 21ft, 8'-6", 1m, 12FT R/L, L=6000, 24" LG, cut to 12-1/2".
 * @param line whose roles are filled in [-]
 * @returns the length's words [text]; the refusal where two are named; undefined where none is
 * @source common practice, no source
 */
export function takeLength(line: Line): LineLength | InputError | undefined {
  const spans: Span[] = [];
  for (let i = 0; i < line.atoms.length; i++) {
    const { kind, text } = line.atoms[i]!;
    const span =
      line.roles[i] !== ""
        ? undefined
        : kind === "number"
          ? (longAt(line, i) ?? tailedAt(line, i))
          : labelledAt(line, i);
    if (span === undefined) {
      if (line.roles[i] === "" && randomWords.has(text)) line.roles[i] = "read";
      continue;
    }
    if (stockWords.has(textAt(line.atoms, i - 1))) line.roles.fill("unread", span.from, span.to + 1);
    else {
      const range = lengthRange(line, span);
      if (range !== undefined) return range;
      spans.push(span);
      take(line, span);
    }
    i = span.to;
  }
  return oneOf(spans);
}

function oneOf(spans: readonly Span[]): LineLength | InputError | undefined {
  const [first, ...others] = spans;
  if (first === undefined) return undefined;
  const range = /^(\d[\d.,]*)[-/](\d[\d.,]* ?[a-z']+)$/.exec(first.text);
  if (range !== null) return lengthBetween(range[1]!, range[2]!);
  const other = others.find((span) => !isEqual(span, first));
  if (other === undefined) return first;
  return itemRefusal("the line gives more than one length: {first} or {second}", {
    first: first.text,
    second: other.text,
  });
}

function isEqual(one: Span, two: Span): boolean {
  if (one.text === two.text) return true;
  const [first, second] = [one, two].map(({ text }) => attemptField(() => readLength(text, "inch")));
  return (
    !one.bare &&
    !two.bare &&
    typeof first === "number" &&
    typeof second === "number" &&
    Math.abs(first - second) < 0.001
  );
}

/** The span, the x and the label before it, and the words behind it that only repeat that it is a length. */
function take(line: Line, { from, to }: Span): void {
  const { atoms, roles } = line;
  const open = (i: number): string => (roles[i] === "" ? atoms[i]!.text : "");
  let [start, end] = [from, to];
  if (open(start - 1) === "x") start -= 1;
  while (lengthLabels.has(open(start - 1)) || marks.has(open(start - 1))) start -= 1;
  if (open(start - 1) === "l" && (start < from || !isLowCarbon(line, start - 1))) start -= 1;
  // x L=120: the x before the label, where none stood before the number.
  if (start < from && open(start - 1) === "x") start -= 1;
  const repeats = (i: number) => lengthTails.has(open(i)) || randomWords.has(open(i));
  while (repeats(end + 1) && !/\d/.test(textAt(atoms, end + 2))) end += 1;
  roles.fill("length", start, end + 1);
}

/** 316 L: the letter is part of the grade. */
function isLowCarbon({ atoms }: Line, i: number): boolean {
  return materialIndex().has(`${textAt(atoms, i - 1)}L`);
}

function textOf({ atoms }: Line, from: number, to: number): string {
  return atoms
    .slice(from, to + 1)
    .map(({ text, spaced }, i) => (spaced && i > 0 ? ` ${text}` : text))
    .join("");
}

const isUnit = ({ atoms, roles }: Line, i: number, units: ReadonlySet<string>): boolean =>
  roles[i] === "" && units.has(atoms[i]!.text);
const shortUnits: ReadonlySet<string> = new Set(
  [...unitWords].filter(([, unit]) => ["in", "mm", "cm"].includes(unit)).map(([word]) => word),
);

/** 21 ft, 8'-6", 12 ft 6 in, 1,5 m; a range such as 10-12' is taken whole, so that it is refused. */
function longAt(line: Line, i: number): Span | undefined {
  const { atoms } = line;
  if (atoms[i]?.kind !== "number") return undefined;
  if (!isUnit(line, i + 1, longUnits) || isShapeM(atoms, i + 1)) return undefined;
  const [from, to] = [isRange(line, i) ? i - 2 : i, endOf(line, i)];
  return { text: textOf(line, from, to), bare: false, from, to };
}

function isRange({ atoms, roles }: Line, i: number): boolean {
  const glued = i >= 2 && !atoms[i]!.spaced && !atoms[i - 1]!.spaced;
  return glued && dashes.has(atoms[i - 1]!.text) && atoms[i - 2]!.kind === "number" && roles[i - 2] === "";
}

/** 2 M 10x9: the shape. */
function isShapeM(atoms: readonly Atom[], i: number): boolean {
  return atoms[i]!.text === "m" && atoms[i]!.spaced && atoms[i + 1]?.kind === "number" && atoms[i + 2]?.kind === "x";
}

/** Where feet and inches, or metres and centimetres, end; 12' (144") are two lengths. */
function endOf(line: Line, from: number): number {
  const { atoms, roles } = line;
  const unit = from + 1;
  const at = dashes.has(textAt(atoms, unit + 1)) ? unit + 2 : unit + 1;
  if (atoms[at]?.kind !== "number" || roles[at] !== "") return unit;
  const end = isUnit(line, at + 1, shortUnits) ? at + 1 : atoms[at].spaced ? unit : at;
  return attemptField(() => readLength(textOf(line, from, end), "inch")) instanceof InputError ? unit : end;
}

/** A number with the unit behind it, if any; undefined where an x follows. */
function numberAt(line: Line, i: number): Span | undefined {
  const { atoms, roles } = line;
  if (atoms[i]?.kind !== "number" || roles[i] !== "") return undefined;
  const united = isUnit(line, i + 1, shortUnits);
  const to = united ? i + 1 : i;
  if (atoms[to + 1]?.kind === "x" && roles[to + 1] === "") return undefined;
  return { text: textOf(line, i, to), bare: !united && !atoms[i].text.includes("/"), from: i, to };
}

const isGradeNumber = ({ atoms }: Line, i: number): boolean => materialIndex().has(textAt(atoms, i));

/** The number is surely of the size: behind x, a diameter sign or a tag. */
function isSized({ atoms }: Line, i: number): boolean {
  const before = textAt(atoms, i - 1);
  return before === "x" || sizeMarks.has(before) || tagWords.has(before);
}

const sizeMarks: ReadonlySet<string> = new Set(["dia", "af", "diameter", "diam"]);

const notTails: ReadonlySet<string> = new Set([...marks, "leg", "legs"]);

/** 24" LG, 3000 lang, 12-1/2 long. Where a number stands on both sides, 3 LG 24, the word alone does not say which is the length. */
function tailedAt(line: Line, i: number): Span | undefined {
  const span = numberAt(line, i);
  if (span === undefined) return undefined;
  const tail = span.to + 1;
  if (!isUnit(line, tail, lengthTails) || notTails.has(textAt(line.atoms, tail + 1))) return undefined;
  if (isOfNext(line, i, tail)) return undefined;
  const alone = numberAt(line, tail + 1) === undefined && !isGradeNumber(line, i);
  return !span.bare || isParted(line, i) || alone ? span : undefined;
}

/** 12 mm, length 80 mm: the word belongs to the number behind it. */
function isOfNext(line: Line, i: number, tail: number): boolean {
  const next = numberAt(line, tail + 1) ?? longAt(line, tail + 1);
  if (next === undefined || isGradeNumber(line, tail + 1)) return false;
  return textAt(line.atoms, tail) === "length" || isSized(line, i);
}

/** Behind an x, or a dash that stands apart. */
function isParted({ atoms }: Line, i: number): boolean {
  const before = atoms[i - 1];
  return before?.kind === "x" || (before?.text === "-" && before.spaced);
}

/** L=6000, length 24, cut to 12-1/2", @ 24". */
function labelledAt(line: Line, i: number): Span | undefined {
  if (!isLabel(line, i)) return undefined;
  const marked = marks.has(textAt(line.atoms, i + 1));
  const at = i + (marked ? 2 : 1);
  const span =
    line.atoms[at]?.kind === "number" && line.roles[at] === "" ? (longAt(line, at) ?? numberAt(line, at)) : undefined;
  if (span === undefined || marked) return span;
  return (span.bare && isGradeNumber(line, at)) || isBetween(line, i, span) ? undefined : span;
}

/** x l2": a one read as a letter. */
const isOne = ({ atoms }: Line, i: number): boolean =>
  atoms[i]!.typed === "l" && textAt(atoms, i - 1) === "x" && atoms[i + 1]?.spaced === false;

/** L is the shape of an angle, too; "to" is a label behind "cut". */
function isLabel(line: Line, i: number): boolean {
  const { atoms } = line;
  const { text } = atoms[i]!;
  if (text === "to" || text === "auf") return cuts.has(textAt(atoms, i - 1));
  if (text !== "l") return lengthLabels.has(text);
  if (marks.has(textAt(atoms, i + 1))) return true;
  return (
    !isOne(line, i) &&
    !isLowCarbon(line, i) &&
    atoms.some(
      ({ kind, text: word }, k) => kind === "word" && k !== i && shapeWords.has(word.split(" ")[0]!) && word !== "m",
    )
  );
}

/** 3 LG 24 and 2.25 LG 15/16 hex leave open which of the two is the length; 4140 LG 24 and round 3 LG 24" do not. */
function isBetween(line: Line, i: number, { bare, to }: Span): boolean {
  const { atoms, roles } = line;
  const isNumber = atoms[i - 1]?.kind === "number" && roles[i - 1] === "" && !isGradeNumber(line, i - 1);
  if (!isNumber) return false;
  const number = isUnit(line, i - 1, shortUnits) ? i - 2 : i - 1;
  if (isSized(line, number)) return false;
  if (atoms[i]!.text === "length") return isShape(atoms[to + 1]);
  return isShape(atoms[to + 1]) || (lengthTails.has(atoms[i]!.text) && (bare || !isShape(atoms[i - 2])));
}

function isShape(atom: Atom | undefined): boolean {
  return atom?.kind === "word" && shapeWords.has(atom.text.split(" ")[0]!);
}
