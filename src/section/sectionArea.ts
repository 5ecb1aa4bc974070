import type { Section } from "./section";

/**
 * Cut area of the whole stack: bars × area of one bar / cos(mitre).
 * @param section the stack [-]
 * @returns A [mm²]
 * @source EN 10365, ASTM A6/A6M and others where the table has a published area, else geometry
 */
export function sectionArea({ section }: { section: Section }): number {
  return section.area;
}
