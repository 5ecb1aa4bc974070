import { itemConstants as k } from "../data/itemConstants";
import { InputError } from "../errors";
import type { Units } from "../quantities";
import { readLength } from "../size/readLength";
import type { Section } from "../section/section";
import { attemptField } from "./attemptField";
import { itemRefusal } from "./itemRefusal";
import type { LineLength } from "./takeLength";

/** German lines part the thousands by a point. */
const thousands = /^\d{1,3}\.\d{3}(?: ?mm)?$/;

/**
 * The length in millimetres. A length without a unit is in the call's unit, as everywhere, but where the trade writes feet or metres
 * too it is refused with both: random lengths; hollow and rolled bars up to 65; in metric lines up to 12; and over 20 m.
 * @param length as the line has it [text]
 * @param section of the bar, where it is read [-]
 * @param units of bare numbers [text]
 * @param random the line speaks of random lengths [-]
 * @param torn the line's units leave open which one a bare length has [-]
 * @returns length [mm], or the refusal
 * @source common practice, no source; the limits are judgement (bars are sold up to 60 ft and 12 m)
 */
export function lengthOf(
  { text, bare }: LineLength,
  section: Section | InputError,
  units: Units,
  random: boolean,
  torn = false,
): number | InputError {
  const read = attemptField(() => readLength(text, units));
  if (read instanceof InputError) return read;
  const open = openLength({ text, bare }, read, units);
  if (open !== undefined) return open;
  const sold = section instanceof InputError || section.hollow || random;
  return bare
    ? bareLength(text, read, otherUnit(Number(text.replace(",", ".")), read, sold, units), units, torn)
    : read;
}

/** A length of two readings, or of none, whatever its unit. */
function openLength({ text, bare }: LineLength, read: number, units: Units): InputError | undefined {
  if (thousands.test(text) && (!bare || units === "metric"))
    return itemRefusal("{text} may be {point} or {whole} mm: write it without the point", {
      text,
      point: text.replace(/0*(?: ?mm)?$/, ""),
      whole: text.replace(/\.| ?mm/g, ""),
    });
  if (read > k.longestBar.value && !bare)
    return itemRefusal("{text} is longer than any bar: is it the length of the whole order?", { text });
  return read === 0 ? itemRefusal("a length must be more than zero") : undefined;
}

function bareLength(
  text: string,
  read: number,
  other: string | undefined,
  units: Units,
  torn: boolean,
): number | InputError {
  if (torn)
    return itemRefusal("the line has inches and millimetres: {number} in or {number} mm? Write the length's unit", {
      number: text,
    });
  if (other === undefined) return read;
  return itemRefusal("a length of {number} without a unit may be {number} {unit} or {number} {other}: write the unit", {
    number: text,
    unit: units === "inch" ? "in" : "mm",
    other,
  });
}

/** The unit in which a bare length may be meant instead. */
function otherUnit(number: number, mm: number, sold: boolean, units: Units): string | undefined {
  if (units === "inch" && sold && number <= k.longestFeet.value) return "ft";
  if (units === "metric" && number <= k.longestMetres.value) return "m";
  return mm <= k.longestPiece.value ? undefined : units === "inch" ? "mm" : "in";
}
