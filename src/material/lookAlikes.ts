import { materialIndex, type IndexEntry } from "./materialIndex";

const cyrillic = "АВСЕНКМОРТХ";
const latin = "ABCEHKMOPTX";

const isCyrillic = (character: string): boolean => character >= "\u0400" && character <= "\u04ff";

function latinOf(character: string): string {
  const at = cyrillic.indexOf(character);
  return at < 0 ? character : latin.charAt(at);
}

/** Whether two forms look alike; most differ in length or in their first character. */
function looksLike(form: string, other: string): boolean {
  if (form.length !== other.length) return false;
  for (let i = 0; i < form.length; i++)
    if (form[i] !== other[i] && latinOf(form.charAt(i)) !== latinOf(other.charAt(i))) return false;
  return true;
}

/**
 * Designations with Cyrillic letters whose Latin look-alikes were typed, or the other way round: 40X and 12X18H10T for the
 * Cyrillic spelling. To be asked only when nothing was found as typed: a Latin M1 is a high-speed steel, a Cyrillic one copper.
 * Latin letters alone are taken for Cyrillic ones only where an X stands among them, the letter of nearly all of these steels.
 * @param form compact form of a designation [text]
 * @returns the entries of the index, or undefined [-]
 * @source common practice, no source
 */
export function lookAlikes(form: string): readonly IndexEntry[] | undefined {
  if (!form.includes("X") && !Array.from(form).some(isCyrillic)) return undefined;
  const found: IndexEntry[] = [];
  for (const [known, entries] of materialIndex()) if (looksLike(form, known)) found.push(...entries);
  return found.length === 0 ? undefined : found;
}
