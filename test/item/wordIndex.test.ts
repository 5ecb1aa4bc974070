import { expect, it } from "vitest";
import { lineWords } from "../../src/data/lineWords";
import { wordMeanings, wordStops } from "../../src/data/wordMeanings";
import { wordIndex } from "../../src/item/wordIndex";
import { foldWord } from "../../src/material/foldWord";

const rows = lineWords.rows
  .trim()
  .split("\n")
  .map((row) => row.split(","));

it("every row is found, folded, with a meaning and a mark (definition)", () => {
  for (const [language, word, meaning, mark] of rows) {
    expect([word, wordIndex().get(word!)]).toEqual([word, expect.arrayContaining([{ language, meaning }])]);
    expect(word).toBe(foldWord(word!));
    expect([meaning, wordMeanings.has(meaning!) || wordStops.has(meaning!)]).toEqual([meaning, true]);
    expect(["seen", "memory"]).toContain(mark);
  }
});
it("a word stands once in a language (definition)", () => {
  const keys = rows.map(([language, word]) => `${language!},${word!}`);
  expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
});
