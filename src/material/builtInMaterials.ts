import { once } from "../once";
import { forceConstants } from "../data/forceConstants";
import { gradeRows } from "../data/gradeSpeeds";
import { groups } from "../data/groups";
import { familyConditions, materialRows, type MaterialRow } from "../data/materials";
import type { Designation, DesignationKind, Material } from "./material";

const bases = {
  S: "AISI 1112/1212 = 100",
  F: "AISI 1112/1212 = 100, value of the alloy family",
  C: "C36000 = 100",
} as const;
const kinds: readonly DesignationKind[] = ["UNS", "AISI, SAE or ASTM", "W.-Nr.", "EN number", "EN name", "JIS"];
const groupByName: ReadonlyMap<string, (typeof groups)[number]> = new Map(groups.map((group) => [group.name, group]));

const handbook = "Machinery's Handbook, 31st ed., p. 1245";
const feetPerMinute = 304.8; // mm/min

/** A grade's own band speed and bite, by the key of its material. */
const own: ReadonlyMap<string, Pick<Material, "bandSpeed" | "biteFactor">> = new Map(
  gradeRows.map(([key, speed, mark, text, bite, biteMark, biteText]) => [
    key,
    {
      bandSpeed: {
        value: speed * feetPerMinute,
        basis: { mark, text: mark === "read" ? `${handbook}${text === "" ? "" : `, ${text}`}` : text },
      },
      biteFactor:
        bite === undefined || biteMark === undefined
          ? undefined
          : { value: bite, basis: { mark: biteMark, text: biteText ?? "" } },
    },
  ]),
);

function words(text: string): readonly string[] {
  return text === "" ? [] : text.split(" ");
}

function readDesignations(
  columns: readonly string[],
  aliases: string,
  full: (text: string) => string,
): readonly Designation[] {
  const found: Designation[] = [];
  const read = (kind: DesignationKind, cell: string): void => {
    const near = cell.startsWith("~");
    if (cell !== "") found.push({ kind, text: full(near ? cell.slice(1) : cell), near });
  };
  columns.forEach((cell, i) => {
    read(kinds[i]!, cell);
  });
  for (const cell of aliases.split(";")) read(/^~?\d\.\d{4}$/.test(cell) ? "W.-Nr." : "also called", cell);
  return found;
}

function readTradeNames(cells: string): readonly Designation[] {
  return cells === ""
    ? []
    : cells.split(";").map((cell) => ({ kind: "trade name", text: cell.replace("~", ""), near: cell.startsWith("~") }));
}

function readRow(row: MaterialRow): Material {
  // prettier-ignore
  const [key, gradeCell, isDefault, tier, name, family, condition, answersTo, uns, sae, wnr, enNumber, enName, jis, letter, group,
    density, least, most, tensile, percent, basis, forceKey, hazards, sources, marks, aliases, tradeNames] = row;
  const grade = gradeCell === "" ? key : gradeCell;
  const stem = grade.replace(/^(?:al-|alloy|sae-|ti-|gci-|dci-|mal-)/, "").toUpperCase();
  const full = (text: string): string => (text.includes("@") ? text.split("@").join(stem) : text);
  const answers = answersTo === "" ? (familyConditions.get(family) ?? "") : answersTo.replace("-", "");
  return {
    key,
    grade,
    isDefault: isDefault === 1,
    tier,
    name: full(name),
    family,
    condition,
    answersTo: words(answers),
    letter,
    group: groupByName.get(group),
    bandSpeed: own.get(key)?.bandSpeed,
    biteFactor: own.get(key)?.biteFactor,
    density: density * 1e-9,
    hardness: { least, most },
    tensile,
    machinability: basis === "" ? undefined : { percent, basis: bases[basis] },
    force: forceConstants.get(forceKey),
    hazards: words(hazards),
    designations: readDesignations([uns, sae, wnr, enNumber, enName, jis], aliases, full),
    tradeNames: readTradeNames(tradeNames),
    sources,
    marks,
  };
}

/** The material table, read when first asked for: each row as a Material. Never changed after. */
export const builtInMaterials: () => readonly Material[] = once(() => materialRows.map(readRow));
