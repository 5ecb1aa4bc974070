import { generalCautions, hazardTexts } from "../data/cautions";
import { materialSources } from "../data/materialSources";
import { InputError } from "../errors";
import { describeDesignation } from "./describeDesignation";
import type { Material } from "./material";
import type { MaterialMatch } from "./matchMaterial";

export interface MaterialData {
  readonly readAs: string;
  readonly name: string;
  readonly group: string;
  readonly letter: string;
  readonly condition: string;
  readonly density: number;
  readonly hardnessLow: number;
  readonly hardnessHigh: number;
  readonly tensile: number;
  readonly machinability: number | InputError;
  readonly machinabilityBasis: string;
  readonly designations: string;
  readonly hazards: string;
  readonly cautions: string;
  readonly sources: string;
  readonly sure: string;
}

const markWords: ReadonlyMap<string, string> = new Map([
  ["s", "seen in its source"],
  ["m", "from memory"],
  ["e", "estimated"],
  ["+", "the shop's own"],
]);

/** What is known of where each value comes from: label, source key, mark letter (empty: the source says it). */
function provenance({ sources, marks, force }: Material): readonly { readonly label: string; readonly source: string; readonly mark: string }[] {
  const rows = [
    ["designations", sources[0], ""],
    ["density", sources[1], ""],
    ["hardness", sources[2], marks[0]],
    ["tensile strength", sources[2], marks[1]],
    ["machinability", sources[3], ""],
    ["force constants", force?.source, marks[2]],
  ] as const;
  return rows.flatMap(([label, key = "-", mark = ""]) => {
    const source = materialSources.get(key);
    return source === undefined ? [] : [{ label, source, mark: markWords.get(mark === "" ? key : mark) ?? "seen in its source" }];
  });
}

/** ISO 513 puts ferritic and hardenable stainless under P; most shops sort all stainless under M. Both are said. */
function letterOf({ letter, group }: Material): string {
  return group === undefined || group.letter === letter ? letter : `${letter} (in most shops ${group.letter})`;
}

function sourcesOf(material: Material): string {
  const lines = provenance(material).map(({ label, source }) => `${label}: ${source}`);
  return [...lines, ...(material.group === undefined ? [] : [`speeds and chips: ${material.group.basis.bands}`])].join("; ");
}

function sureOf(material: Material): string {
  const marks = provenance(material).map(({ label, mark }) => `${label} ${mark}`);
  return `${marks.join(", ")}; cutting data: a starting point, not measured`;
}

/**
 * What is known of a material, for a worksheet row or a card.
 * @param input material as it was matched
 * @returns density [kg/mm³], hardness [HB], tensile [N/mm²], machinability [%] or the refusal of that field, the rest [text]
 * @source the material's own row: `sources` and `sure` say where each value comes from and how good it is
 */
export function materialData({ material: match }: { readonly material: MaterialMatch }): MaterialData {
  const { material } = match;
  const { name, group, condition, density, hardness, tensile, machinability, hazards, designations } = material;
  const known = hazards.map((key) => hazardTexts.get(key) ?? key);
  return {
    readAs: match.note === "" ? match.matched : `${match.matched}: ${match.note}`,
    name,
    group: group?.name ?? "none: no cutting data",
    letter: letterOf(material),
    condition,
    density,
    hardnessLow: hardness.least,
    hardnessHigh: hardness.most,
    tensile,
    machinability: machinability?.percent ?? new InputError("none", "material", "no machinability figure for {name}", { name }),
    machinabilityBasis: machinability?.basis ?? "none",
    designations: designations.map((designation) => (designation.near ? "near " : "") + describeDesignation({ material, designation })).join("; "),
    hazards: known.length === 0 ? "none noted here; see the safety data sheet" : known.join(" "),
    cautions: generalCautions.join(" "),
    sources: sourcesOf(material),
    sure: sureOf(material),
  };
}
