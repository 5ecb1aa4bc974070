import type { IndexEntry } from "./materialIndex";

const saysItsKind = new Set(["UNS", "W.-Nr.", "JIS"]);

/**
 * A designation in words: "UNS S17400", "EN AW-6061"; a key or a name gives the display name of its material, a trade name
 * its UNS number, or the display name where it has none.
 * @param entry material and designation
 * @returns the words [text]
 * @source definition
 */
export function describeDesignation({ material, designation }: IndexEntry): string {
  if (designation.kind === "name") return material.name;
  if (designation.kind === "trade name") {
    const number = material.designations.find(({ kind, near }) => kind === "UNS" && !near);
    return number === undefined ? material.name : `UNS ${number.text}`;
  }
  return saysItsKind.has(designation.kind) ? `${designation.kind} ${designation.text}` : designation.text;
}
