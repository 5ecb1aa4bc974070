import { decidingEnds } from "../data/wordMeanings";
import { wordIndex, type WordRow } from "./wordIndex";

/** Shorter beginnings and ends say nothing. */
const shortestPart = "abcd".length;
const shortestEnd = "abc".length;

/**
 * What a word may mean: as it stands, with ae for ä, by its beginning, or by the end of a compound.
 * @param word folded [text]
 * @returns rows of every language that has it, none where nobody does [-]
 * @source definition
 */
export function findWord(word: string): readonly WordRow[] {
  const plain = wordIndex().get(word) ?? wordIndex().get(word.replace(/([aou])e/g, "$1"));
  return plain ?? byBeginning(word) ?? byEnd(word) ?? [];
}

function byBeginning(word: string): readonly WordRow[] | undefined {
  for (let length = word.length; length >= shortestPart; length--) {
    const rows = wordIndex().get(`${word.slice(0, length)}*`);
    if (rows !== undefined) return rows;
  }
  return undefined;
}

/** Präzisionsrohr: any head, where the end decides; Silberstahl: both, where the head is known. */
function byEnd(word: string): readonly WordRow[] | undefined {
  for (let head = 2; head <= word.length - shortestEnd; head++) {
    const rows = wordIndex().get(`-${word.slice(head)}`);
    if (rows === undefined) continue;
    const first = wordIndex().get(word.slice(0, head)) ?? wordIndex().get(word.slice(0, head).replace(/s$/, ""));
    return rows.flatMap(({ language, meaning }) => {
      const before = first?.find((row) => row.language === language || row.language === "any");
      if (before !== undefined) return [{ language, meaning: `${before.meaning}+${meaning}` }];
      return decidingEnds.has(meaning) ? [{ language, meaning }] : [];
    });
  }
  return undefined;
}
