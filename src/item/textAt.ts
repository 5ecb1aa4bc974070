import type { Atom } from "./item";

/**
 * The text of an atom; empty before the first and behind the last.
 * @param atoms of a line [-]
 * @param i which [-]
 * @returns its text [text]
 * @source definition
 */
export function textAt(atoms: readonly Atom[], i: number): string {
  return atoms[i]?.text ?? "";
}
