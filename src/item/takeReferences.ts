import { itemConstants as k } from "../data/itemConstants";
import { longUnits, referenceLabels, referenceTails } from "../data/itemWords";
import { compactDesignation } from "../material/compactDesignation";
import { materialIndex } from "../material/materialIndex";
import type { Line } from "./item";
import { isDimension } from "./isDimension";
import { textAt } from "./textAt";

/**
 * Sets aside the numbers that only label a line: PO 12345, Pos. 10, EN 10060, 25 kg, h9. They are among the words not read.
 * @param line whose roles are filled in [-]
 * @returns nothing [-]
 * @source common practice, no source; ISO 286 for tolerance classes
 */
export function takeReferences(line: Line): void {
  for (let i = 0; i < line.atoms.length; i++) {
    const { kind, text } = line.atoms[i]!;
    if (line.roles[i] !== "") continue;
    if (kind === "word" && referenceLabels.has(text)) labelled(line, i);
    else if (kind === "code" && (isTolerance(line, i) || standard.test(text))) line.roles[i] = "unread";
    else if (kind === "number") aside(line, i);
  }
}

/** A standard joined to its number. */
const standard = /^(?:bs|iso|din|is|ams|jis|gost|gb|uni|api)(?:en)?[a-z]?\d{3,5}(?:-\d+)?$|^(?:g3|g4|h4)\d{3}$/;
const tolerance = /^(?:h|k|f|g|j|js|e|d)(?:[5-9]|1[0-3])$/;
const toleranceWords: ReadonlySet<string> = new Set(["tol", "tolerance"]);

/** H11 and H13 are tool steels too: they are tolerances beside their word, beside another grade, and behind a number of a metric line. */
function isTolerance({ atoms, units }: Line, i: number): boolean {
  const { text } = atoms[i]!;
  if (!tolerance.test(text)) return false;
  if ([1, -1, -2].some((by) => toleranceWords.has(textAt(atoms, i + by)))) return true;
  if (i === 0 || !materialIndex().has(compactDesignation(text))) return i > 0;
  return atoms.some(({ kind, text: other }, at) =>
    kind === "number"
      ? at < i && units === "metric"
      : at !== i && kind === "code" && materialIndex().has(compactDesignation(other)),
  );
}

/** A price, a weight or a tolerance, with the signs before it and the unit behind it. */
function aside({ atoms, roles }: Line, i: number): void {
  let from = i;
  while (isGlued(atoms, from)) from -= 1;
  if (isRate(atoms, i)) {
    roles.fill("unread", from, i + k.priceAtoms.value + 1);
    return;
  }
  const weighed =
    from === i && textAt(atoms, i - 1) !== "x" && referenceTails.has(textAt(atoms, i + 1)) && !isLead(atoms, i + 1);
  const marked = from < i && leads.has(atoms[from]!.text);
  if (!weighed && !marked) return;
  let to = weighed ? i + 1 : i;
  while (atoms[to + 1]?.spaced === false) to += 1;
  roles.fill("unread", from, to + 1);
}

/** A sign joined to what stands behind it. */
const isGlued = (atoms: Line["atoms"], i: number): boolean =>
  (!atoms[i]!.spaced && atoms[i - 1]?.kind === "mark") || (textAt(atoms, i - 1) === "@" && isRate(atoms, i));

/** €45: the sign of the number that it is joined to, not of the one before. */
const isLead = (atoms: Line["atoms"], i: number): boolean =>
  leads.has(textAt(atoms, i)) && atoms[i + 1]?.kind === "number" && !atoms[i + 1]!.spaced;

/** 62/kg, 1.25/lb. */
function isRate(atoms: Line["atoms"], i: number): boolean {
  const [slash, unit] = [atoms[i + 1], atoms[i + 2]];
  return slash?.text === "/" && !slash.spaced && rates.has(unit?.text ?? "") && !/^[x#]$/.test(textAt(atoms, i - 1));
}

const rates: ReadonlySet<string> = new Set("kg lb lbs mtr m ft pc pcs nos each ton t".split(" "));
const leads: ReadonlySet<string> = new Set("$€+±₹£¥₽₩");

const signs: ReadonlySet<string> = new Set(":#=.");
const standards: ReadonlySet<string> = new Set(["din", "en", "iso"]);

function labelled(line: Line, i: number): void {
  const { atoms, roles } = line;
  let at = i + 1;
  while (atoms[at] !== undefined && (referenceLabels.has(atoms[at]!.text) || signs.has(atoms[at]!.text))) at += 1;
  if (!isReference(line, i, at)) return;
  roles.fill("unread", i, at + 1);
  for (at += 1; atoms[at]?.spaced === false; at++) roles[at] = "unread";
  // EN 10204 3.1: the kind of certificate.
  if (standards.has(atoms[i]!.text) && atoms[at]?.text === "3.1") roles[at] = "unread";
}

function isReference(line: Line, label: number, at: number): boolean {
  const { atoms } = line;
  const [{ text: word }, number] = [atoms[label]!, atoms[at]];
  if (number === undefined || !/\d/.test(number.text) || isGradeNumber(line, label, at)) return false;
  if (word === "no" && atoms[label - 1]?.kind === "number") return false;
  if (number.kind !== "number") return true;
  return !isMeasured(line, at) && (!standards.has(word) || /^\d{3,5}$/.test(number.text));
}

function isMeasured(line: Line, at: number): boolean {
  return isDimension(line, at) || longUnits.has(textAt(line.atoms, at + 1));
}

/** EN 24 and EN 1.4301 are grades, Mat. Nr. 1.4301 too. */
function isGradeNumber({ atoms }: Line, label: number, at: number): boolean {
  const { text } = atoms[at]!;
  if (/^\d[.,]\d{4}$/.test(text)) return true;
  return standards.has(atoms[label]!.text) && materialIndex().has(compactDesignation(`en ${text}`));
}
