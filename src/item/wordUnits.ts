import { findWord } from "./findWord";
import { foldWord } from "../material/foldWord";
import { lineTokens } from "./lineTokens";
import { wordIndex, type WordRow } from "./wordIndex";

/** A word of a line with what it may mean, or what stands between two. */
export interface WordUnit {
  readonly text: string;
  /** Folded; empty for what is no word. */
  readonly word: string;
  readonly rows: readonly WordRow[];
  /** Written in signs that are joined without spaces. */
  readonly asian: boolean;
}

const longestPhrase = ["first", "second", "third"].length;
const none: readonly WordRow[] = [];
const inner = /(?<=[.&/’'-])|(?=[.&/’'-])/u;

/**
 * The words of a line with every meaning that the table gives them, the longest first: phrases, words, the parts of words with a dash,
 * and words within a run of signs that knows no spaces.
 * @param line in plain signs [text]
 * @returns units whose texts together are the line [-]
 * @source definition
 */
export function wordUnits(line: string): readonly WordUnit[] {
  const tokens = lineTokens(line);
  const units: WordUnit[] = [];
  for (let i = 0; i < tokens.length;) {
    const { text, kind } = tokens[i]!;
    const length = kind === "word" ? phraseAt(tokens, i) : 0;
    if (length > 0) units.push(unitOf(textOf(tokens, i, length)));
    else if (kind === "asian") units.push(...asianUnits(text));
    else if (kind === "word") units.push(...wordParts(text));
    else units.push({ text, word: "", rows: none, asian: false });
    i += Math.max(length, 1);
  }
  return units;
}

const textOf = (tokens: ReturnType<typeof lineTokens>, from: number, length: number): string =>
  tokens
    .slice(from, from + length)
    .map(({ text }) => text)
    .join("");

/** How many tokens a phrase of several words takes. */
function phraseAt(tokens: ReturnType<typeof lineTokens>, from: number): number {
  for (let words = longestPhrase; words > 1; words--) {
    const length = words + words - 1;
    if (from + length <= tokens.length && wordIndex().has(foldWord(textOf(tokens, from, length)))) return length;
  }
  return 0;
}

const unitOf = (text: string): WordUnit => {
  const word = foldWord(text).replace(/\.$/, "");
  return { text, word, rows: findWord(word), asian: false };
};

function wordParts(text: string): readonly WordUnit[] {
  const whole = unitOf(text);
  if (whole.rows.length > 0 || !/[.&/’'-]\p{L}/u.test(text)) return [whole];
  const parts = text.split(inner).map(unitOf);
  return parts.some(({ rows }) => rows.length > 0) ? parts : [whole];
}

/** The longest known word at each place; what nobody knows stays together. */
function asianUnits(text: string): readonly WordUnit[] {
  const units: WordUnit[] = [];
  let unknown = "";
  for (let at = 0; at < text.length;) {
    const known = longestAt(text, at);
    if (known === undefined) unknown += text.charAt(at);
    else {
      if (unknown !== "") units.push({ text: unknown, word: unknown, rows: none, asian: true });
      unknown = "";
      units.push({ text: known, word: known, rows: findWord(foldWord(known)), asian: true });
    }
    at += known?.length ?? 1;
  }
  if (unknown !== "") units.push({ text: unknown, word: unknown, rows: none, asian: true });
  return units;
}

const longestWord = "エキスパンドメタル".length;

function longestAt(text: string, at: number): string | undefined {
  for (let length = Math.min(longestWord, text.length - at); length > 0; length--) {
    const part = text.slice(at, at + length);
    if (!/^[a-z]$/i.test(part) && wordIndex().has(foldWord(part))) return part;
  }
  return undefined;
}
