import { lengthLabels, lengthTails, longUnits, randomWords } from "../data/itemWords";
import { shapeWords, unitWords } from "../data/sectionWords";
import type { InputError } from "../errors";
import { materialIndex } from "../material/materialIndex";
import { attemptField } from "./attemptField";
import type { Line } from "./item";
import { itemRefusal } from "./itemRefusal";
import { readLength } from "../section/readLength";

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
    const span = line.roles[i] !== "" ? undefined : kind === "number" ? (longAt(line, i) ?? tailedAt(line, i)) : labelledAt(line, i);
    if (span === undefined) {
      if (randomWords.has(text)) line.roles[i] = "read";
      continue;
    }
    spans.push(span);
    take(line, span);
    i = span.to;
  }
  return oneOf(spans);
}

function oneOf(spans: readonly Span[]): LineLength | InputError | undefined {
  const [first, ...others] = spans;
  if (first === undefined) return undefined;
  const value = ({ text }: Span) => attemptField(() => readLength(text, "inch"));
  const other = others.find((span) => span.text !== first.text && (first.bare || span.bare || Math.abs(Number(value(span)) - Number(value(first))) > 1e-6 || Number.isNaN(Number(value(span)))));
  if (other === undefined) return first;
  return itemRefusal("the line gives more than one length: {first} or {second}", { first: first.text, second: other.text });
}

/** The span, the x and the label before it, and the words behind it that only repeat that it is a length. */
function take({ atoms, roles }: Line, { from, to }: Span): void {
  let [start, end] = [from, to];
  const before = () => (roles[start - 1] === "" ? atoms[start - 1]?.text : undefined);
  while (before() !== undefined && (lengthLabels.has(before()!) || marks.has(before()!) || (start === from && before() === "x"))) start -= 1;
  while (roles[end + 1] === "" && (lengthTails.has(atoms[end + 1]!.text) || randomWords.has(atoms[end + 1]!.text)) && !/\d/.test(atoms[end + 2]?.text ?? "")) end += 1;
  for (let i = start; i <= end; i++) roles[i] = "length";
}

function textOf({ atoms }: Line, from: number, to: number): string {
  return atoms.slice(from, to + 1).map(({ text, spaced }, i) => (spaced && i > 0 ? ` ${text}` : text)).join("");
}

const isUnit = (text: string | undefined, units: ReadonlySet<string>): boolean => text !== undefined && units.has(text);
const shortUnits: ReadonlySet<string> = new Set([...unitWords].filter(([, unit]) => ["in", "mm", "cm"].includes(unit)).map(([word]) => word));

/** 21 ft, 8'-6", 12 ft 6 in, 1,5 m; a range such as 10-12' is taken whole, so that it is refused. */
function longAt(line: Line, i: number): Span | undefined {
  const { atoms, roles } = line;
  const unit = atoms[i + 1];
  if (roles[i + 1] !== "" || !isUnit(unit?.text, longUnits)) return undefined;
  // 2 M 10x9: the shape M.
  if (unit!.text === "m" && unit!.spaced && atoms[i + 2]?.kind === "number" && atoms[i + 3]?.kind === "x") return undefined;
  const ranged = dashes.has(atoms[i - 1]?.text ?? "") && atoms[i - 2]?.kind === "number" && roles[i - 2] === "";
  let to = i + 1;
  const at = dashes.has(atoms[to + 1]?.text ?? "") ? to + 2 : to + 1;
  const next = atoms[at];
  if (next?.kind === "number" && roles[at] === "") {
    if (isUnit(atoms[at + 1]?.text, shortUnits)) to = at + 1;
    else if (!next.spaced) to = at;
  }
  const from = ranged ? i - 2 : i;
  return { text: textOf(line, from, to), bare: false, from, to };
}

/** A number with the unit behind it, if any; undefined where an x follows. */
function numberAt(line: Line, i: number): Span | undefined {
  const { atoms, roles } = line;
  if (atoms[i]?.kind !== "number" || roles[i] !== "") return undefined;
  const united = roles[i + 1] === "" && isUnit(atoms[i + 1]?.text, shortUnits);
  const to = united ? i + 1 : i;
  if (atoms[to + 1]?.kind === "x" && roles[to + 1] === "") return undefined;
  return { text: textOf(line, i, to), bare: !united && !atoms[i]!.text.includes("/"), from: i, to };
}

const isGradeNumber = ({ atoms }: Line, i: number): boolean => materialIndex.has(atoms[i]?.text ?? "");

/** 24" LG, 3000 lang, 12-1/2 long. */
function tailedAt(line: Line, i: number): Span | undefined {
  const span = numberAt(line, i);
  const tail = span === undefined ? undefined : line.atoms[span.to + 1];
  if (span === undefined || tail === undefined || !lengthTails.has(tail.text) || line.roles[span.to + 1] !== "") return undefined;
  const after = marks.has(line.atoms[span.to + 2]?.text ?? "") || line.atoms[span.to + 2]?.text === "leg";
  const sure = !span.bare || line.atoms[i - 1]?.kind === "x" || (numberAt(line, span.to + 2) === undefined && !isGradeNumber(line, i));
  return sure && !after ? span : undefined;
}

/** L=6000, length 24, cut to 12-1/2", @ 24". */
function labelledAt(line: Line, i: number): Span | undefined {
  const { atoms } = line;
  const { text } = atoms[i]!;
  if (text !== "l" && !lengthLabels.has(text)) return undefined;
  if ((text === "to" || text === "auf") && !cuts.has(atoms[i - 1]?.text ?? "")) return undefined;
  const marked = marks.has(atoms[i + 1]?.text ?? "");
  const at = i + (marked ? 2 : 1);
  const span = numberAt(line, at);
  if (span === undefined || (span.bare && !marked && (isGradeNumber(line, at) || afterBare(line, i)))) return undefined;
  // L is the shape of an angle, too.
  const isLabel = text !== "l" || marked || atoms.some(({ kind, text: word }, k) => kind === "word" && k !== i && shapeWords.has(word) && word !== "m");
  return isLabel ? span : undefined;
}

/** 3 LG 24 leaves open which of the two is the length; 4140 LG 24 does not. */
function afterBare(line: Line, i: number): boolean {
  return lengthTails.has(line.atoms[i]!.text) && line.atoms[i - 1]?.kind === "number" && line.roles[i - 1] === "" && !isGradeNumber(line, i - 1);
}
