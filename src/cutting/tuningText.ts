import type { Cut } from "./cut";

/**
 * Which tuning holds for a cut: "Rate factor 0.86 from 7 own cuts".
 * @param cut its rate factor [-] and what stands behind it
 * @returns the words; empty where the shop block says nothing of it [text]
 * @source the shop's own data
 */
export function tuningText({ rateFactor, factorFrom }: Pick<Cut, "rateFactor" | "factorFrom">): string {
  return factorFrom === undefined ? "" : `Rate factor ${Number(rateFactor.toPrecision(3))} from ${factorFrom}`;
}
