import type { Entry } from "../../functions/bind/entry";

const small = new Set([
  "a",
  "an",
  "the",
  "is",
  "are",
  "it",
  "of",
  "to",
  "my",
  "i",
  "do",
  "does",
  "can",
  "in",
  "for",
  "how",
  "what",
  "which",
]);
const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((w) => w !== "");

/** A word is found where a word begins with it: "min" finds minutes. */
const share = (typed: readonly string[], text: string): number => {
  const words = wordsOf(text);
  return typed.filter((t) => words.some((w) => w.startsWith(t))).length / typed.length;
};

function rank({ name, asks, help }: Entry, query: string, typed: readonly string[]): number {
  const plain = name.toLowerCase();
  if (plain === query) return 10;
  if (asks.some((a) => a.toLowerCase().startsWith(query))) return 9;
  if (plain.startsWith(query)) return 8;
  const key = typed.filter((t) => !small.has(t));
  const wanted = key.length === 0 ? typed : key;
  const asked = Math.max(0, ...asks.map((a) => share(wanted, a)));
  if (asked === 1) return 7;
  return share(wanted, `${name} ${help} ${asks.join(" ")}`) === 1 ? 5 : asked >= 0.5 ? 1 + asked : 0;
}

/** Functions that answer what is typed, best first; all of them, in their own order, when nothing is. */
export function findFunctions(catalogue: readonly Entry[], query: string): readonly Entry[] {
  const typed = wordsOf(query);
  if (typed.length === 0) return catalogue;
  const plain = query
    .trim()
    .toLowerCase()
    .replace(/^=?(saw\.)?/, "");
  const ranked = catalogue.map((e, i) => ({ e, i, rank: rank(e, plain, typed) })).filter(({ rank }) => rank > 0);
  return ranked.sort((a, b) => b.rank - a.rank || a.i - b.i).map(({ e }) => e);
}
