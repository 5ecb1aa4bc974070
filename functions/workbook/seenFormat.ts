/** Excel's own limit of a number format's length. */
const longest = 255;

/** A number format's sections, parted by ";" outside of quotation marks. */
const sectionsOf = (format: string): readonly string[] => format.split(/;(?=(?:[^"]*"[^"]*")*[^"]*$)/);

const holdsWords = (format: string): boolean => /"[^"]+"|\\./.test(format);
const hasCondition = (format: string): boolean => /\[[<>=]/.test(format);

/** Which section a value is shown by: above 0, below 0, 0, text. */
function sectionFor(value: number | string, count: number): number {
  if (typeof value === "string") return 3;
  const wanted = value > 0 ? 0 : value < 0 ? 1 : 2;
  return wanted < count ? wanted : 0;
}

/** The format with this value's own section only: sections that it never shows may hold words. */
function ownSection(value: number | string, sections: readonly string[]): string | undefined {
  const own = sections[sectionFor(value, sections.length)];
  if (own === undefined || sections.length === 1) return own;
  return typeof value === "string" ? `;;;${own}` : `${own};${own};${own}`;
}

/**
 * What a reader sees of a value's number format: `isShown` is false for a section that is empty, as in ;;; and its like.
 * Where other sections hold words the format keeps the value's own section only; where a condition chooses, none.
 */
export function seenFormat(
  value: number | string | boolean | null,
  format: string | undefined,
): { readonly isShown: boolean; readonly format: string | undefined } {
  if (format === undefined || format.length > longest) return { isShown: true, format: undefined };
  const isWordy = holdsWords(format);
  if (value === null || typeof value === "boolean") return { isShown: true, format: isWordy ? undefined : format };
  const sections = sectionsOf(format);
  const isShown = sections.length === 1 || sections[sectionFor(value, sections.length)]?.trim() !== "";
  if (!isWordy) return { isShown, format };
  return { isShown, format: hasCondition(format) ? undefined : ownSection(value, sections) };
}
