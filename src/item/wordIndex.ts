import { lineWords } from "../data/lineWords";
import { once } from "../once";

/** What a word means in a language. */
export interface WordRow {
  readonly language: string;
  readonly meaning: string;
}

function index(): ReadonlyMap<string, readonly WordRow[]> {
  const rows = new Map<string, WordRow[]>();
  for (const line of lineWords.rows.trim().split("\n")) {
    const [language = "", word = "", meaning = ""] = line.split(",");
    const found = rows.get(word);
    if (found === undefined) rows.set(word, [{ language, meaning }]);
    else found.push({ language, meaning });
  }
  return rows;
}

/** Every word of src/data/lineWords.ts, folded, with what it means: a star at the end, or a dash at the beginning, as there. */
export const wordIndex: () => ReadonlyMap<string, readonly WordRow[]> = once(index);
