import type { Line } from "../../src/item/item";
import { openLine } from "../../src/item/openLine";
import type { Units } from "../../src/quantities";

/** A line of which nothing is read yet. */
export function lineOf(text: string, units: Units = "inch"): Line {
  const { atoms } = openLine(text);
  return { atoms, roles: atoms.map(() => ""), units };
}

/** What of a line has been given a role, as typed. */
export const taken = ({ atoms, roles }: Line, ...wanted: readonly string[]): string =>
  atoms.flatMap(({ typed }, i) => (wanted.includes(roles[i]!) ? [typed] : [])).join(" ");
