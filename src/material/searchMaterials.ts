import { once } from "../once";
import { plainNames } from "../data/plainNames";
import { builtInMaterials } from "./builtInMaterials";
import { compactDesignation } from "./compactDesignation";
import { describeDesignation } from "./describeDesignation";
import type { Material } from "./material";
import { formsByFirst, type IndexEntry } from "./materialIndex";

export interface SearchHit {
  readonly material: Material;
  /** What matched, in words: "UNS S17400". */
  readonly matched: string;
}

interface Ranked {
  readonly material: Material;
  readonly matched: string | IndexEntry;
  readonly rank: number;
}

/** While a name is being typed its breaks are not yet right: 17-4P must already find 17-4PH. */
function joined(text: string): string {
  return compactDesignation(text).replace(/-/g, "");
}

const words = (text: string): readonly string[] =>
  text
    .toUpperCase()
    .split(/[^\p{L}\p{N}.]+/u)
    .filter((word) => word !== "");

// Made once: each key stroke goes through all of them.
const typedForms = once(
  () =>
    new Map(
      [...formsByFirst()].map(([first, forms]) => [
        first,
        forms.map(([form, entries]) => [form.includes("-") ? form.replace(/-/g, "") : form, entries] as const),
      ]),
    ),
);
const ownWords = once(() =>
  builtInMaterials().map(
    (material) => [material, words(`${material.name} ${material.family} ${material.condition}`)] as const,
  ),
);

/** Exact first, then beginnings; a name that is only near comes after. */
function designationHits(query: string): readonly Ranked[] {
  const hits: Ranked[] = [];
  for (const [typed, entries] of typedForms().get(query.charAt(0)) ?? []) {
    if (!typed.startsWith(query)) continue;
    const rank = typed === query ? 0 : 2;
    for (const entry of entries)
      hits.push({ material: entry.material, matched: entry, rank: rank + (entry.designation.near ? 1 : 0) });
  }
  return hits;
}

function nameHits(query: string, typed: readonly string[]): readonly Ranked[] {
  const plain = [...plainNames]
    .filter(([name]) => name.startsWith(query))
    .map(([name, key]) => ({ key, rank: name === query ? 0 : 4 }));
  return ownWords().flatMap(([material, own]) => {
    const taken = plain
      .filter(({ key }) => key === material.key)
      .map(({ rank }) => ({ material, matched: "plain name", rank }));
    const named = typed.every((word) => own.some((candidate) => candidate.startsWith(word)))
      ? [{ material, matched: material.name, rank: 5 }]
      : [];
    return [...taken, ...named];
  });
}

/**
 * Materials for a list that narrows as one types: exact designation, then designations that begin so, then plain names,
 * then names that hold every word. Nothing is guessed: no edit distance, a digit that differs is another grade.
 * @param query what is typed so far [text]
 * @param limit greatest number of hits [-]
 * @returns hits, best first, each material once, with what matched [-]
 * @source common practice, no source
 */
export function searchMaterials(query: string, limit: number): readonly SearchHit[] {
  const form = joined(query);
  if (form === "" || query.length > 120) return [];
  const best = new Map<Material, Ranked>();
  for (const hit of [...designationHits(form), ...nameHits(form, words(query))]) {
    const known = best.get(hit.material);
    if (known === undefined || hit.rank < known.rank) best.set(hit.material, hit);
  }
  const order = [...best.values()].sort(
    (a, b) =>
      a.rank - b.rank ||
      a.material.tier - b.material.tier ||
      Number(b.material.isDefault) - Number(a.material.isDefault),
  );
  return order.slice(0, limit).map(({ material, matched }) => ({
    material,
    matched: typeof matched === "string" ? matched : describeDesignation(matched),
  }));
}
