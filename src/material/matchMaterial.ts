import { InputError } from "../errors";
import { dualCertificates, otherMeanings, plainNames } from "../data/plainNames";
import { builtInMaterials } from "./builtInMaterials";
import { compactDesignation } from "./compactDesignation";
import { foreignName } from "./foreignName";
import { describeDesignation } from "./describeDesignation";
import { lookAlikes } from "./lookAlikes";
import { once } from "../once";
import type { Material } from "./material";
import { materialIndex, type IndexEntry } from "./materialIndex";
import { nearestDesignations } from "./nearestDesignations";
import { readDesignation, type Family, type Reading } from "./readDesignation";

export interface MaterialMatch {
  readonly material: Material;
  /** The designation that matched, with its kind: "UNS S17400". */
  readonly matched: string;
  /** What was assumed, in words; empty where nothing was. */
  readonly note: string;
}

const parameter = "material";
const byKey: () => ReadonlyMap<string, Material> = once(
  () => new Map(builtInMaterials().map((material) => [material.key, material])),
);

function isOf(entry: IndexEntry, family: Family): boolean {
  const { family: name } = entry.material;
  switch (family) {
    case "UNS":
      return entry.designation.kind === "UNS" || /^[A-Z]\d{5}$/.test(entry.designation.text);
    case "W.-Nr.":
      return entry.designation.kind === "W.-Nr.";
    case "steel":
      return name.includes("steel");
    case "stainless":
      return name === "stainless steel" || name === "heat-resistant alloy";
    case "iron":
      return name === "cast iron";
    default:
      return name.startsWith(family);
  }
}

/** A number in a cell: whole numbers are their digits; a cell turns 1.4310 into 1.431, so four decimals are put back. */
function digits(designation: number): string {
  const isFraction = designation < 10 && !Number.isInteger(designation);
  if (!Number.isFinite(designation) || designation < 0)
    throw new InputError("invalid", parameter, "{given} is not a designation", { given: `${designation}` });
  return isFraction && Math.abs(designation * 1e4 - Math.round(designation * 1e4)) < 1e-6
    ? designation.toFixed(4)
    : `${designation}`;
}

function severalMeanings(given: string, names: readonly string[]): InputError {
  return new InputError("none", parameter, "{given} means more than one material: {meanings}", {
    given,
    meanings: [...new Set(names)].join("; "),
  });
}

const isOwnName = ({ material, designation }: IndexEntry): boolean =>
  designation.kind === "name" && designation.text !== material.grade;

/** The row of a grade in the condition stated; the row that matched where none is. */
function rowOf({ material }: IndexEntry, condition: string, given: string): Material {
  if (condition === "") return material;
  const rows = builtInMaterials().filter((row) => row.grade === material.grade);
  const stated = rows.find((row) => row.answersTo.includes(condition));
  if (stated !== undefined) return stated;
  const conditions = rows.map((row) => row.condition).join("; ");
  throw new InputError("none", parameter, "{given}: the table has {name} only as {conditions}", {
    given,
    name: rows[0]!.name,
    conditions,
  });
}

function noteOf(entry: IndexEntry, row: Material, condition: string): string {
  const trade = entry.designation.kind === "trade name" ? [`trade name, taken as ${row.name}`] : [];
  const near = entry.designation.near ? [`the nearest in the table is ${row.name}`] : trade;
  const others = builtInMaterials()
    .filter((other) => other.grade === row.grade && other !== row)
    .map((other) => other.condition);
  const open = condition === "" && others.length > 0 && row.isDefault && !isOwnName(entry);
  return [
    ...near,
    ...(open ? [`condition not stated: ${row.condition} taken; also in the table: ${others.join(", ")}`] : []),
  ].join("; ");
}

type EntriesOf = (form: string) => readonly IndexEntry[] | undefined;
const asTyped: EntriesOf = (form) => materialIndex().get(form);

function lookUp(
  { form, families, condition }: Reading,
  given: string,
  entriesOf: EntriesOf = asTyped,
): MaterialMatch | undefined {
  const entries = (entriesOf(form) ?? []).filter((entry) => families.every((family) => isOf(entry, family)));
  const best = entries.filter((entry) => !entry.designation.near || entries.every((other) => other.designation.near));
  const entry = best.find(isOwnName) ?? best.find((candidate) => candidate.material.isDefault) ?? best[0];
  if (entry === undefined) return undefined;
  if (best.some((other) => other.material.grade !== entry.material.grade))
    throw severalMeanings(
      given,
      best.map((other) => other.material.name),
    );
  const material = rowOf(entry, condition, given);
  return { material, matched: describeDesignation(entry), note: noteOf(entry, material, condition) };
}

function plain(text: string): MaterialMatch | undefined {
  const key = plainNames.get(compactDesignation(text)) ?? (/\d/.test(text) ? undefined : foreignName(text));
  const material = key === undefined ? undefined : byKey().get(key);
  return material && { material, matched: text, note: `plain name, taken as ${material.name}, ${material.condition}` };
}

function single(text: string, given: string): MaterialMatch | undefined {
  const found = plain(text) ?? lookUp({ form: compactDesignation(text), families: [], condition: "" }, given);
  if (found !== undefined) return found;
  const readings = readDesignation(text);
  for (const entriesOf of [asTyped, lookAlikes]) {
    for (const reading of readings) {
      const match = lookUp(reading, given, entriesOf);
      if (match !== undefined) return match;
    }
  }
  return undefined;
}

/** Two designations of one piece, "1.4301 (304)" or a dual certificate, "A36/A572-50". */
function several(text: string, given: string): MaterialMatch | undefined {
  const parts = text
    .split(/[()[\]/|;]+/)
    .map((part) => part.trim())
    .filter((part) => part !== "");
  const matches = parts.length > 3 ? [] : parts.map((part) => single(part, given));
  const [first, second] = matches;
  if (first === undefined || second === undefined || matches.includes(undefined)) return undefined;
  const keys = [...new Set(matches.map((match) => match!.material.key))];
  if (keys.length === 1) return first;
  const dual = dualCertificates.find((pair) => keys.length === 2 && keys.includes(pair[0]) && keys.includes(pair[1]));
  if (dual === undefined)
    throw severalMeanings(
      given,
      matches.map((match) => match!.material.name),
    );
  const material = byKey().get(dual[2])!;
  return { material, matched: text, note: `dual certificate, cut as ${material.name}` };
}

/**
 * The material that a designation names, and how it was read. Own materials come first, then plain names, then the table:
 * the designation as it stands, then without leading words (AISI, UNS, W.-Nr. …), product standard, family word and
 * condition, then with Latin and Cyrillic letters that look alike taken for each other. One designation is never answered with another: same before near, and two equals are refused naming both.
 * @param designation as typed [text], or a number in a cell [-]
 * @param own materials of the shop block [-]
 * @returns material, matched designation and note [-]
 * @throws InputError "invalid": no designation; "none": not in the table, two honest meanings, or a condition that the table lacks
 * @source rules: common practice, no source; facts: src/data/materials.ts, each row with its sources
 */
export function matchMaterial(designation: string | number, own: readonly Material[]): MaterialMatch {
  const text = (typeof designation === "number" ? digits(designation) : designation).trim();
  const given = text.length > 60 ? `${text.slice(0, 60)}…` : text;
  const form = text.length > 120 ? "" : compactDesignation(text);
  if (text === "") throw new InputError("invalid", parameter, "a material is wanted");
  const mine = own.find((material) => compactDesignation(material.name) === form);
  if (mine !== undefined) return { material: mine, matched: mine.name, note: "own material" };
  const match = form === "" ? undefined : (single(text, given) ?? several(text, given));
  const other = otherMeanings.get(form);
  if (match !== undefined)
    return other === undefined
      ? match
      : { ...match, note: [match.note, other].filter((note) => note !== "").join("; ") };
  const nearest = nearestDesignations(form).join(", ");
  if (nearest === "") throw new InputError("none", parameter, "{given} is not in the material table", { given });
  throw new InputError("none", parameter, "{given} is not in the material table; the nearest there: {nearest}", {
    given,
    nearest,
  });
}
