import { InputError } from "../errors";
import type { Units } from "../quantities";
import { readLength } from "../section/readLength";
import type { Section } from "../section/section";
import { attemptField } from "./attemptField";
import { itemRefusal } from "./itemRefusal";
import type { LineLength } from "./takeLength";

const longestFeet = 65;
const longestMetres = 12;
const longestPiece = 20_000; // mm

/**
 * The length in millimetres. A length without a unit is in the call's unit, as everywhere, but where the trade writes feet or metres
 * too it is refused with both: random lengths; hollow and rolled bars up to 65; in metric lines up to 12; and over 20 m.
 * @param length as the line has it [text]
 * @param section of the bar, where it is read [-]
 * @param units of bare numbers [text]
 * @param random the line speaks of random lengths [-]
 * @returns length [mm], or the refusal
 * @source common practice, no source; the limits are judgement (bars are sold up to 60 ft and 12 m)
 */
export function lengthOf({ text, bare }: LineLength, section: Section | InputError, units: Units, random: boolean): number | InputError {
  const read = attemptField(() => readLength(text, units));
  if (read instanceof InputError || !bare) return read === 0 ? itemRefusal("a length must be more than zero") : read;
  const number = Number(text.replace(",", "."));
  const sold = section instanceof InputError || section.hollow || random;
  const open = units === "inch" ? sold && number <= longestFeet : number <= longestMetres;
  const [short, long] = units === "inch" ? ["in", open ? "ft" : "mm"] : ["mm", open ? "m" : "in"];
  if (open || read > longestPiece) return itemRefusal("a length of {number} without a unit may be {number} {short} or {number} {long}: write the unit", { number: text, short, long });
  return read === 0 ? itemRefusal("a length must be more than zero") : read;
}
