import type { PitchedWork } from "./cut";

/**
 * What is asked of a cut, solved once: a section that keeps what was solved for it gives it again for the very same material,
 * class of blade, pitch and shop. All of them are values that never change.
 * @param what name of the question [text]
 * @param work section, material, blade, pitch, shop
 * @param solve the answer, asked for where none is kept
 * @returns the answer [its units]
 * @source own mechanism
 */
export function solvedOnce<T>(what: string, work: PitchedWork, solve: () => T): T {
  const { section, material, blade, pitch, shop } = work;
  return section.solved === undefined ? solve() : section.solved(what, [material, blade, pitch?.text, shop], solve);
}
