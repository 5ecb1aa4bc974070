import { longUnits, referenceLabels, referenceTails } from "../data/itemWords";
import { compactDesignation } from "../material/compactDesignation";
import { materialIndex } from "../material/materialIndex";
import type { Line, Role } from "./item";
import { isDimension } from "./isDimension";

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
    else if (kind === "code" && /^[hk](?:[6-9]|10)$/.test(text)) line.roles[i] = "unread";
    else if (kind === "number" && (isWeight(line, i) || isTolerance(line, i))) fill(line, i, "unread");
  }
}

function isWeight({ atoms, roles }: Line, i: number): boolean {
  const [before, next] = [atoms[i - 1]?.text ?? "", atoms[i + 1]?.text ?? ""];
  if (before === "$" || before === "€") return true;
  return referenceTails.has(next) && before !== "x" && before !== "-" && roles[i + 1] === "";
}

function isTolerance({ atoms }: Line, i: number): boolean {
  const before = atoms[i - 1];
  return before?.kind === "mark" && !atoms[i]!.spaced && ["+", "±"].includes(before.text);
}

/** A number with the sign before it and the unit behind it. */
function fill(line: Line, i: number, role: Role): void {
  const { atoms, roles } = line;
  roles[i] = role;
  if (atoms[i - 1]?.kind === "mark") roles[i - 1] = role;
  const unit = atoms[i + 1];
  if (unit !== undefined && (referenceTails.has(unit.text) || (!unit.spaced && unit.kind === "word"))) roles[i + 1] = role;
}

function labelled(line: Line, i: number): void {
  const { atoms, roles } = line;
  let at = i + 1;
  while (atoms[at] !== undefined && (referenceLabels.has(atoms[at]!.text) || [":", "#", "=", "."].includes(atoms[at]!.text))) at += 1;
  const number = atoms[at];
  if (number === undefined || !/\d/.test(number.text) || isGradeNumber(line, i, at)) return;
  const standard = ["din", "en", "iso"].includes(atoms[i]!.text);
  if (number.kind === "number" && (isDimension(line, at) || longUnits.has(atoms[at + 1]?.text ?? "") || (standard && !/^\d{3,5}$/.test(number.text)))) return;
  if (atoms[i]!.text === "no" && atoms[i - 1]?.kind === "number") return;
  for (let k = i; k <= at; k++) roles[k] = "unread";
  for (at += 1; atoms[at] !== undefined && !atoms[at]!.spaced; at++) roles[at] = "unread";
  if (standard && atoms[at]?.text === "3.1") roles[at] = "unread";
}

/** EN 24 and EN 1.4301 are grades, Mat. Nr. 1.4301 too. */
function isGradeNumber({ atoms }: Line, label: number, at: number): boolean {
  const { text } = atoms[at]!;
  if (/^\d[.,]\d{4}$/.test(text)) return true;
  return ["en", "din"].includes(atoms[label]!.text) && materialIndex.has(compactDesignation(`en ${text}`));
}
