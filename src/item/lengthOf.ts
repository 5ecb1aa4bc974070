import { InputError } from "../errors";
import type { Units } from "../quantities";
import { readLength } from "../section/readLength";
import type { Section } from "../section/section";
import { attemptField } from "./attemptField";
import { itemRefusal } from "./itemRefusal";
import type { LineLength } from "./takeLength";

const longestBar = 65; // ft
const shortestBar = 12; // mm, and the longest bar in m

/**
 * The length in millimetres. A length without a unit is in the call's unit, as everywhere, but where the trade writes feet or metres
 * too it is refused with both: random lengths; hollow and rolled bars up to 65; in metric lines up to 12.
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
  const open = units === "inch" ? sold && number <= longestBar : number <= shortestBar;
  if (open) return itemRefusal("a length of {number} without a unit may be {number} {short} or {number} {long}: write the unit", { number: text, short: units === "inch" ? "in" : "mm", long: units === "inch" ? "ft" : "m" });
  return read === 0 ? itemRefusal("a length must be more than zero") : read;
}
