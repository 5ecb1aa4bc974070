import { phrases } from "../data/sectionWords";
import type { Token } from "./sizeTokens";

type Phrase = { readonly words: readonly string[]; readonly kind: "lie" | "word"; readonly becomes: string };

const byFirst: ReadonlyMap<string, readonly Phrase[]> = phrases.reduce((map, [phrase, kind, becomes]) => {
  const words = phrase.split(" ");
  return map.set(
    words[0]!,
    [...(map.get(words[0]!) ?? []), { words, kind, becomes }].sort((a, b) => b.words.length - a.words.length),
  );
}, new Map<string, readonly Phrase[]>());

const heSeries: ReadonlySet<string> = new Set(["a", "aa", "b", "c", "m"]);
const ipeSeries: ReadonlySet<string> = new Set(["a", "aa", "o", "v"]);

/**
 * Joins phrases of several words into one token, and the series letter of HE and IPE beams with its word: HE 200 B and HE B 200 become HEB 200.
 * @param tokens of a size [-]
 * @returns tokens [-]
 * @source common practice, no source; EN 10365 for the series letters
 */
export function sizePhrases(tokens: readonly Token[]): readonly Token[] {
  const joined: Token[] = [];
  for (let i = 0; i < tokens.length;) {
    const token = tokens[i]!;
    const phrase =
      token.kind === "word"
        ? byFirst.get(token.text)?.find(({ words }) => words.every((word, k) => tokens[i + k]?.text === word))
        : undefined;
    if (phrase === undefined) joined.push(token);
    else if (phrase.becomes !== "") joined.push({ ...token, kind: phrase.kind, text: phrase.becomes });
    i += phrase?.words.length ?? 1;
  }
  return joinSeries(joined);
}

function joinSeries(tokens: readonly Token[]): readonly Token[] {
  const at = tokens.findIndex(({ kind, text }) => kind === "word" && (text === "he" || text === "ipe"));
  if (at < 0) return tokens;
  const word = tokens[at]!;
  const series = word.text === "he" ? heSeries : ipeSeries;
  const [next, after] = [tokens[at + 1], tokens[at + 2]];
  const rest = (from: number) => tokens.slice(at + from);
  const named = (letter: string): Token => ({ ...word, text: word.text + letter });
  if (next?.kind === "word" && series.has(next.text)) return [...tokens.slice(0, at), named(next.text), ...rest(2)];
  if (next?.kind !== "number") return tokens;
  if (series.has(next.unit)) return [...tokens.slice(0, at), named(next.unit), { ...next, unit: "" }, ...rest(2)];
  if (after?.kind === "word" && series.has(after.text))
    return [...tokens.slice(0, at), named(after.text), next, ...rest(3)];
  return tokens;
}
