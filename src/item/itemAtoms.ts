import { plainWords } from "../data/itemWords";
import { compactDesignation } from "../material/compactDesignation";
import { materialIndex } from "../material/materialIndex";
import { normaliseSize } from "../size/normaliseSize";
import type { Atom } from "./item";
import { knownWord } from "./knownWord";

/**
 * Cuts a line into atoms. A group of letters and figures is taken apart where every part is a known word, number or
 * sign, as in 12ft or W12x50; else it stays whole, as a code. German words become English ones.
 * @param description the line [text]
 * @returns atoms [-]
 * @source common practice, no source
 */
export function itemAtoms(description: string): readonly Atom[] {
  // "(10)" counts; every other bracket only parts.
  const counted = description.replace(/\(\s*(\d{1,6})\s*\)/g, " \u0001$1\u0002 ").replace(/[()[\]{}|]/g, " ");
  const chunks = counted.split(/[\s;]+|,(?!\d)|(?<!\d),/).flatMap((typed) =>
    normaliseSize(typed)
      .split(" ")
      .map((text) => ({ text, typed })),
  );
  const cleaned = chunks
    .map(({ text, typed }) => ({
      text: text.length > 1 ? text.replace(/(?<=[a-z\d])[.:]$/, (sign) => (sign === ":" ? ":" : "")) : text,
      typed,
    }))
    .filter(({ text }) => text !== "");
  return joinFractions(cleaned.flatMap(({ text, typed }, i) => chunkAtoms(text, typed, cleaned[i + 1]?.text ?? "")));
}

function chunkAtoms(text: string, typed: string, next: string): readonly Atom[] {
  const whole = (kind: Atom["kind"], becomes: string): readonly Atom[] => [
    { kind, text: becomes, typed, spaced: true },
  ];
  const counted = /^\u0001(\d+)\u0002$/.exec(text);
  if (counted !== null) return [{ kind: "code", text: `(${counted[1]!})`, typed: `(${counted[1]!})`, spaced: true }];
  const plain = plainWords.get(text) ?? wholeWord(text);
  if (plain !== undefined) return whole("word", plain);
  if (/\d/.test(text) && isGrade(text, next)) return whole("code", text);
  const atoms = cut(text, typed.length === text.length ? typed : text);
  if (/\d/.test(text) && (isCode(text, next) || atoms.some(isUnknown))) return whole("code", text);
  return atoms.length === 1 ? [{ ...atoms[0]!, typed }] : atoms;
}

const wholeWord = (text: string): string | undefined =>
  !/\d/.test(text) && text !== "x" && knownWord(text) !== undefined ? text : undefined;
const isUnknown = ({ kind, text }: Atom): boolean =>
  kind === "word" && text.split(" ").some((word) => knownWord(word) === undefined);

/** A designation as it stands, unless an x behind it makes it the beginning of a size: C10 x 20. A bare whole number is not yet one. */
function isGrade(text: string, next: string): boolean {
  if (/^\d+$|^-|['"]/.test(text) || /^[\d.,]*[.,]\d+$/.test(text)) return false;
  // No channel is as deep as C45; before an x it is the steel.
  if (/^[a-z]{1,2}\d+$/.test(text) && !/^c(?:19|[2-9]\d)$/.test(text) && opensSize(next)) return false;
  return materialIndex().has(compactDesignation(text)) && !/^\d+x\d/.test(text);
}

function opensSize(next: string): boolean {
  return /^x(?:\d|\.\d|$)/.test(next);
}

/** S420, T6, 6061-T6, 304LN, +QT: letters of sizes, but not standing as a size has them. */
function isCode(text: string, next: string): boolean {
  if (/\/[a-z]{0,3}\d{3}/.test(text) || /[a-z\d]\+/.test(text) || /^\d{3,5}-?(?![x"'])[a-z]\d*$/.test(text))
    return !/^\d{3,4}-?[m]$/.test(text);
  const letter = /^([a-z])(\d+)$/.exec(text);
  if (/^\d{3,5}-[a-z]/.test(text) || /^(?:ss|st|sts|sus)\d{3,4}[a-z]?$|^\d\d(?:cr|mn|si)[a-z\d]*$/.test(text))
    return true;
  if (letter === null) return false;
  // L6000, D50, U200: a length, a diameter, a channel that the size reader asks about.
  if (/^(?:l\d{3,}|d\d{2,}|[ux]\d+)$/.test(text)) return false;
  return !opensSize(next);
}

type Push = (kind: Atom["kind"], piece: string, becomes?: string) => void;

const pieces =
  /(\d+-\d+\/\d+|\d+\/\d+|\d*[.,]\d+(?:[.,]\d+)*|\d+)|((?:[a-z](?:[./][a-z])+(?!\p{L})(?:\.(?!\d))?)|\p{L}[\p{L}\p{M}]*(?:&[a-z]+)*(?:\.(?!\d))?)|([\s\S])/gu;

/** Both texts are equally long: the plain one, and the same as typed. */
function cut(text: string, typed: string): readonly Atom[] {
  const atoms: Atom[] = [];
  let at = 0;
  const push: Push = (kind, piece, becomes = piece) => {
    atoms.push({ kind, text: becomes, typed: typed.slice(at, at + piece.length), spaced: atoms.length === 0 });
    at += piece.length;
  };
  for (const [, number, word, mark] of text.matchAll(pieces)) {
    if (number !== undefined) push("number", number);
    else if (mark !== undefined) push("mark", mark);
    else cutWord(word!, push);
  }
  return atoms;
}

/** ODx is OD x; a lone x separates; the point of an abbreviation is left out. */
function cutWord(written: string, push: Push): void {
  const word =
    /^[a-z][./]/.test(written) && knownWord(written) === undefined
      ? written.replace(/[./]/g, "")
      : written.replace(/\.$/, "");
  const before = /^(.+)x$/.exec(word)?.[1];
  if (word === "x") push("x", "x");
  else if (before !== undefined && knownWord(word) === undefined && knownWord(before) !== undefined) {
    push("word", before, plainWords.get(before) ?? before);
    push("x", "x");
  } else push("word", written, plainWords.get(word) ?? word);
}

/** 1 1/4: a whole number of at most two figures before a fraction. 1018 1/2 is a grade and a fraction. */
function joinFractions(atoms: readonly Atom[]): readonly Atom[] {
  const joined: Atom[] = [];
  for (const atom of atoms) {
    const last = joined[joined.length - 1];
    const mixed =
      atom.kind === "number" &&
      atom.spaced &&
      /^\d+\/\d+$/.test(atom.text) &&
      last?.kind === "number" &&
      /^\d{1,2}$/.test(last.text);
    if (mixed)
      joined[joined.length - 1] = { ...last, text: `${last.text} ${atom.text}`, typed: `${last.typed} ${atom.typed}` };
    else joined.push(atom);
  }
  return joined;
}
