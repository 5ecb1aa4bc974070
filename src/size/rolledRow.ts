import type { SectionFamily } from "../data/sectionFamily";
import { europeanSections } from "../data/sectionsEn";
import { americanSections } from "../data/sectionsUs";

/** A row of the tables: its designation's numbers and its figures, as sectionFamily.ts describes them. */
export interface RolledRow {
  readonly family: SectionFamily;
  readonly key: string;
  readonly figures: readonly number[];
}

const families: readonly SectionFamily[] = [...americanSections, ...europeanSections];

/**
 * Looks a designation up.
 * @param name of the table, for example W [text]
 * @param key its numbers, for example 12x50 or, metric, 310x74 [text]
 * @param unit only tables in this unit; any where left out [text]
 * @returns the row, or undefined [-]
 * @source ASTM A6/A6M, EN 10365, EN 10056-1
 */
export function rolledRow(name: string, key: string, unit?: "in" | "mm"): RolledRow | undefined {
  for (const family of families) {
    if (family.name !== name || (unit !== undefined && family.unit !== unit)) continue;
    const at = [`\n${key},`, `\n${key}|`, `|${key},`]
      .map((pattern) => family.rows.indexOf(pattern))
      .find((found) => found >= 0);
    if (at === undefined) continue;
    const start = family.rows.lastIndexOf("\n", at) + 1;
    const [keys = "", ...figures] = family.rows.slice(start, family.rows.indexOf("\n", start)).split(",");
    return { family, key: keys.split("|")[0]!, figures: figures.map(Number) };
  }
  return undefined;
}
