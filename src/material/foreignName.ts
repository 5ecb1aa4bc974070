import { once } from "../once";
import { lineWords } from "../data/lineWords";
import { plainNames } from "../data/plainNames";
import { compactDesignation } from "./compactDesignation";
import { foldWord } from "./foldWord";

/** Meanings of words that are plain names of a metal. */
const metals: ReadonlySet<string> = new Set([
  "stainless",
  "aluminium",
  "brass",
  "bronze",
  "copper",
  "titanium",
  "nickel",
  "tool steel",
]);

function index(): ReadonlyMap<string, string> {
  const names = new Map<string, string>();
  const open = new Set<string>();
  for (const row of lineWords.rows.trim().split("\n")) {
    const [, word = "", meaning = ""] = row.split(",");
    if ((names.get(word) ?? meaning) !== meaning) open.add(word);
    names.set(word, meaning);
  }
  return new Map([...names].filter(([word, meaning]) => metals.has(meaning) && !open.has(word)));
}

const names = once(index);
/** Shorter beginnings say nothing. */
const shortest = "abcd".length;

/**
 * The plain English name of a metal whose name in another language is given: ottone and латунь are brass.
 * @param text as typed [text]
 * @returns key of plainNames.ts, or undefined [text]
 * @source src/data/lineWords.ts
 */
export function foreignName(text: string): string | undefined {
  const word = foldWord(text);
  let name = names().get(word);
  for (let length = word.length; name === undefined && length >= shortest; length--)
    name = names().get(`${word.slice(0, length)}*`);
  return name === undefined ? undefined : plainNames.get(compactDesignation(name));
}
