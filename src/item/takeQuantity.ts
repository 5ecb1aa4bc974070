import { itemConstants as k } from "../data/itemConstants";
import { countLabels, countWords, lengthLabels, unsureCounts } from "../data/itemWords";
import { shapeWords, tagWords, unitWords } from "../data/sectionWords";
import type { InputError } from "../errors";
import { materialIndex } from "../material/materialIndex";
import type { Atom, Line } from "./item";
import { itemRefusal } from "./itemRefusal";
import { knownWord } from "./knownWord";
import { textAt } from "./textAt";

/** A count: its number, its atoms from and to, and whether it may be a length too. */
interface Count {
  readonly text: string;
  readonly from: number;
  readonly to: number;
  readonly unsure: boolean;
}

const noLabels: ReadonlySet<string> = new Set(["no", "st", "off"]);
const sizeMarks: ReadonlySet<string> = new Set(["dia", "af", "diameter", "diam"]);
const ors: ReadonlySet<string> = new Set("or oder ou u lub nebo eller veya или bis to - /".split(" "));

/**
 * Takes the number of pieces out of a line: 12 pcs, qty 5, (10), 25 ea, 5 off, 10 Stk, 5 x round …, 5 @ 24".
 * @param line whose roles are filled in [-]
 * @returns pieces [-]; the refusal where two are named or the number is not whole; undefined where the line says none
 * @source common practice, no source
 */
export function takeQuantity(line: Line): number | InputError | undefined {
  const counts = line.atoms.flatMap((_, i) => countAt(line, i) ?? []);
  for (const { from, to } of counts)
    for (let i = from; i <= to; i++)
      if (line.atoms[i]!.text !== "bars" && line.atoms[i]!.text !== "@") line.roles[i] = "quantity";
  const [first] = counts;
  if (first === undefined) return undefined;
  const unsure = counts.find((count) => count.unsure);
  if (unsure !== undefined)
    return itemRefusal("{count} may be the quantity, or a length or grade; write for example qty {count}", {
      count: unsure.text,
    });
  return severalOf(line, counts) ?? wholeOf(first);
}

/** The refusal of several quantities. */
function severalOf(line: Line, counts: readonly Count[]): InputError | undefined {
  // 3 pcs 300 mm, 3 pcs 450 mm.
  const lengths = counts.filter(({ to }) => isMeasured(line.atoms[to + 2])).map(({ to }) => textAt(line.atoms, to + 1));
  const several = counts.find(({ from, to }) => new Set(lengths).size > 1 || isOneOfSeveral(line.atoms, from, to));
  if (several !== undefined)
    return itemRefusal("{count} may be one of several quantities: write the one that is meant", {
      count: several.text,
    });
  const values = [...new Set(counts.map(({ text }) => text))];
  if (values.length === 1) return undefined;
  return itemRefusal("the line gives more than one quantity: {values}", { values: values.join(" or ") });
}

function wholeOf(first: Count): number | InputError {
  if (thousands.test(first.text))
    return itemRefusal("a quantity of {text} may be {part} or {whole}: write it without the sign", {
      text: first.text,
      part: String(Number(first.text.replace(",", "."))),
      whole: first.text.replace(/[.,]/, ""),
    });
  const value = Number(first.text.replace(",", "."));
  if (!Number.isInteger(value) || value < 1 || value > 1e6)
    return itemRefusal("a quantity of {text} is not a whole number of pieces, 1 or more", { text: first.text });
  return value;
}

/** 5,000 pcs is five thousand in English and five in German; 1.000 the other way round. */
const thousands = /^[1-9]\d{0,2}[.,]\d{3}$/;

function countAt(line: Line, i: number): Count | undefined {
  const { atoms, roles } = line;
  const atom = atoms[i]!;
  if (roles[i] !== "") return undefined;
  if (atom.kind === "code") return inBrackets(atom, i);
  if (atom.kind === "word") return behindLabel(atoms, i);
  if (atom.kind !== "number" || atom.text.includes("/")) return undefined;
  if (isBound(atoms, i)) return undefined;
  return beforeWord(atoms, i) ?? beforeShape(atoms, i) ?? timesLength(line, i);
}

/** Ø80, SW 19, od 100, L=55: the number belongs to the word before it; in 50 dia 5 pcs that word has its own. */
function isBound(atoms: readonly Atom[], i: number): boolean {
  const marked = textAt(atoms, i - 1) === "=" || textAt(atoms, i - 1) === ":";
  const label = marked ? i - 2 : i - 1;
  const word = textAt(atoms, label);
  if (marked && (word === "l" || lengthLabels.has(word))) return true;
  return (tagWords.has(word) || sizeMarks.has(word)) && !isTail(atoms, label);
}

/** 50 dia: the number stands before the word. A sign stands before its number. */
function isTail(atoms: readonly Atom[], label: number): boolean {
  const before = atoms[label - 1];
  return !atoms[label]!.typed.startsWith("Ø") && (before?.kind === "number" || unitWords.has(before?.text ?? ""));
}

/** "(10)"; but "(304)" may be a grade. */
function inBrackets({ text }: Atom, i: number): Count | undefined {
  const number = /^\((\d+)\)$/.exec(text)?.[1];
  return number === undefined || materialIndex().has(number)
    ? undefined
    : { text: number, from: i, to: i, unsure: false };
}

function behindLabel(atoms: readonly Atom[], i: number): Count | undefined {
  const { text } = atoms[i]!;
  const marked = [":", "=", "#", "."].includes(textAt(atoms, i + 1));
  const number = atoms[i + (marked ? 2 : 1)];
  if (number?.kind !== "number") return undefined;
  const label = countLabels.has(text) || (marked && countWords.has(text) && text !== "no");
  return label || isLabel(atoms, i, number.text)
    ? { text: number.text, from: i, to: i + (marked ? 2 : 1), unsure: false }
    : undefined;
}

/** Pieces 100: no number before the word, and behind it a plain one. */
function isLabel(atoms: readonly Atom[], i: number, number: string): boolean {
  const { text } = atoms[i]!;
  if (!countWords.has(text) || noLabels.has(text)) return false;
  if (atoms[i - 1]?.kind === "number" && !isBound(atoms, i - 1)) return false;
  return !isMeasured(atoms[i + 2]) && /^\d{1,4}$/.test(number) && !materialIndex().has(number);
}

function beforeWord(atoms: readonly Atom[], i: number): Count | undefined {
  const { text } = atoms[i]!;
  const word = textAt(atoms, i + 1);
  const behindX = textAt(atoms, i - 1) === "x";
  if (word === "@") return behindX ? undefined : { text, from: i, to: i, unsure: false };
  // St 52-3 is a steel.
  if (!countWords.has(word) || (word === "st" && /^\d/.test(textAt(atoms, i + 2)))) return undefined;
  if (materialIndex().has(text)) return gradeBefore(atoms, i);
  const unsure = (behindX && unsureCounts.has(word)) || isBetween(atoms, i);
  return { text, from: behindX ? i - 1 : i, to: i + 1, unsure };
}

/** IPE 200 Stk 4, length 6 pcs 4, 60 x 5 Stk 4: the word between two bare numbers, of which the first may belong to what stands before it. */
function isBetween(atoms: readonly Atom[], i: number): boolean {
  const next = atoms[i + 2];
  const before = textAt(atoms, i - 1);
  const taken = before === "x" || shapeWords.has(before) || tagWords.has(before) || lengthLabels.has(before);
  if (!taken || unitWords.has(before) || next?.kind !== "number" || materialIndex().has(next.text)) return false;
  return /^\d{1,4}$/.test(next.text) && !isMeasured(atoms[i + 3]);
}

/** 4140 pcs 5: the number before is a grade. */
function gradeBefore(atoms: readonly Atom[], i: number): Count {
  const next = atoms[i + 2];
  const label = next?.kind === "number" && /^\d+$/.test(next.text) && !isMeasured(atoms[i + 3]);
  return label
    ? { text: next.text, from: i + 1, to: i + 2, unsure: false }
    : { text: atoms[i]!.text, from: i, to: i + 1, unsure: true };
}

function isMeasured(atom: Atom | undefined): boolean {
  return atom !== undefined && (atom.kind === "x" || unitWords.has(atom.text) || sizeMarks.has(atom.text));
}

/** 50x50x5 S235, 4 x 2400 mm: behind the whole size, a count times a length with its unit. */
function timesLength({ atoms, roles }: Line, i: number): Count | undefined {
  const { text, spaced } = atoms[i]!;
  if (!spaced || !/^\d{1,3}$/.test(text) || !isApart(atoms[i - 1]) || !isLongBehind(atoms, i)) return undefined;
  const sized = atoms.slice(0, i).some(({ kind }, at) => roles[at] === "" && kind === "x");
  // 3 x 120 mm, 2 x 240 mm: pieces of several lengths.
  const other = atoms.some((atom, at) => at !== i && atom.kind === "number" && isLongBehind(atoms, at));
  return sized && !other ? { text, from: i, to: i, unsure: false } : undefined;
}

/** Nothing that the number could belong to. */
const isApart = (before: Atom | undefined): boolean =>
  before?.kind === "code" ||
  (before?.kind === "word" &&
    knownWord(before.text.split(" ")[0]!) !== undefined &&
    !shapeWords.has(before.text) &&
    before.text !== "dia");

/** An x, and a length with its unit that is long enough for a piece. */
function isLongBehind(atoms: readonly Atom[], i: number): boolean {
  const [x, number, unit, next] = atoms.slice(i + 1);
  if (x?.kind !== "x" || number?.kind !== "number" || !lengthUnits.has(unit?.text ?? "") || next?.kind === "x")
    return false;
  const least = unit!.text === "mm" ? k.shortestTimes.value * Number(atoms[i]!.text) : 0;
  return Number(number.text.replace(",", ".")) > least;
}

const lengthUnits: ReadonlySet<string> = new Set(["mm", "m", "cm", "ft", "'"]);

/** 5-7 pcs, 5 or 10 pcs, qty 10, 25 or 50; 2x5 pcs; 4 pcs per set. */
function isOneOfSeveral(atoms: readonly Atom[], from: number, to: number): boolean {
  const isNumber = (i: number): boolean => atoms[i]?.kind === "number";
  const isOr = (i: number): boolean =>
    ors.has(textAt(atoms, i)) && !(/^[-/]$/.test(atoms[i]!.text) && atoms[i]!.spaced);
  if (textAt(atoms, to + 1) === "per" || (from === 1 && atoms[1]!.kind === "x" && isNumber(0))) return true;
  const next = isNumber(to) && isNumber(to + 1) ? to + 2 : to + 1;
  return (isNumber(from) && isOr(from - 1) && isNumber(from - 2)) || (isNumber(to) && isOr(next) && isNumber(next + 1));
}

/** 5 x round 3, 10x Rund 80: an x behind which no number stands. */
function beforeShape(atoms: readonly Atom[], i: number): Count | undefined {
  const { text } = atoms[i]!;
  const next = atoms[i + 2];
  if (textAt(atoms, i + 1) !== "x" || textAt(atoms, i - 1) === "x" || !/^\d+$/.test(text)) return undefined;
  if ((next?.kind !== "word" && next?.kind !== "code") || next.text.startsWith("(")) return undefined;
  // Rund 60 x C45: the number is the size of the shape before it; ext. 100 x int. 70 counts nothing.
  if (shapeWords.has(textAt(atoms, i - 1).split(" ")[0]!)) return undefined;
  if (next.kind === "word" && knownWord(next.text.split(" ")[0]!) === undefined) return undefined;
  return { text, from: i, to: i + 1, unsure: false };
}
