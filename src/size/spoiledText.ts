const months = "jan|feb|mar|apr|may|jun|jul|aug|sep|sept|oct|nov|dec";
const dates = [
  /^\d{1,4}\/\d{1,2}\/\d{2,4}$/,
  /^\d{1,2}\.\d{1,2}\.\d{4}$/,
  /^\d{4}-\d{1,2}-\d{1,2}(?: \d\d:\d\d:\d\d)?$/,
  /^\d{1,2}-\d{1,2}-\d{2,4}$/,
  new RegExp(`^\\d{1,2}[- .]?(?:${months})[a-z]*\\.?(?:[- ]\\d{2,4})?$`),
  new RegExp(`^(?:${months})-\\d{1,4}$`),
  new RegExp(`^(?:jan|feb|mar|apr|jun|jul|aug|sep|sept|nov|dec)[a-z]* \\d{1,4}$`),
];
const errorValue =
  /^#(?:n\/a|value!|ref!|name\?|div\/0!|num!|null!|spill!|calc!|getting_data|busy!|connect!|field!|blocked!|unknown!)$/;

/**
 * Whether a text is what a spreadsheet makes of a size: a date (from 3/4 or 2-1) or an error value.
 * @param plain text, as normaliseSize gives it [text]
 * @returns "date", "error" or undefined [text]
 * @source common practice, no source; "oct 2" stays a size, since an octagon may be meant
 */
export function spoiledText(plain: string): "date" | "error" | undefined {
  if (errorValue.test(plain)) return "error";
  return dates.some((date) => date.test(plain)) ? "date" : undefined;
}
