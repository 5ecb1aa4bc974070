/** A word of a line, or what stands between two words. */
export interface LineToken {
  readonly text: string;
  /** "asian" is written without spaces. */
  readonly kind: "word" | "asian" | "other";
}

const asian = "\\p{Script=Han}\\p{Script=Hangul}\\p{Script=Hiragana}\\p{Script=Katakana}ー";
const letter = `(?![${asian}])[\\p{L}\\p{M}]`;
const pattern = new RegExp(
  `((?:(?<![A-Za-z])[A-Za-z]-?)?[${asian}]+)|((?:${letter})+(?:[.&/’'-](?:${letter})+)*\\.?)|([^\\p{L}]+)`,
  "gu",
);

/**
 * Cuts a line into words and the rest between them.
 * @param line in plain signs [text]
 * @returns pieces whose texts together are the line [-]
 * @source definition
 */
export function lineTokens(line: string): readonly LineToken[] {
  return Array.from(line.matchAll(pattern), ([text, signs, word]) => ({
    text,
    kind: signs !== undefined ? "asian" : word !== undefined ? "word" : "other",
  }));
}
