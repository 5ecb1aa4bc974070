import { generalCautions, hazardTexts } from "../data/cautions";
import { InputError } from "../errors";
import { cuttingBasis } from "./cuttingBasis";
import { describeDesignation } from "./describeDesignation";
import type { Material } from "./material";
import type { MaterialMatch } from "./matchMaterial";
import { provenance } from "./provenance";

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
  readonly confidence: string;
}

/** ISO 513 puts ferritic and hardenable stainless under P; most shops sort all stainless under M. Both are said. */
function letterOf({ letter, group }: Material): string {
  return group === undefined || group.letter === letter ? letter : `${letter} (in most shops ${group.letter})`;
}

function sourcesOf(material: Material): string {
  return [...provenance(material), ...cuttingBasis(material)]
    .map(({ label, source }) => `${label}: ${source}`)
    .join("; ");
}

function confidenceOf(material: Material): string {
  return [...provenance(material), ...cuttingBasis(material)].map(({ label, mark }) => `${label} ${mark}`).join(", ");
}

/**
 * What is known of a material, for a worksheet row or a card.
 * @param input material as it was matched
 * @returns density [kg/mm³], hardness [HB], tensile [N/mm²], machinability [%] or the refusal of that field, the rest [text]
 * @source the material's own row: `sources` and `confidence` say where each value comes from and how good it is
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
    machinability:
      machinability?.percent ?? new InputError("none", "material", "no machinability figure for {name}", { name }),
    machinabilityBasis: machinability?.basis ?? "none",
    designations: designations
      .map((designation) => (designation.near ? "near " : "") + describeDesignation({ material, designation }))
      .join("; "),
    hazards: known.length === 0 ? "none noted here; see the safety data sheet" : known.join(" "),
    cautions: generalCautions.join(" "),
    sources: sourcesOf(material),
    confidence: confidenceOf(material),
  };
}
