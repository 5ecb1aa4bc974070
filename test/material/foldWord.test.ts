import { expect, it } from "vitest";
import { foldWord } from "../../src/material/foldWord";

it.each([
  ["Größe", "grosse"],
  ["ŁĄCZNIK", "lacznik"],
  ["İNÇ", "inc"],
  ["kırmızı", "kirmizi"],
  ["Ống", "ong"],
  ["Шестигранный", "шестигранныи"],
  ["丸棒", "丸棒"],
  ["환봉", "환봉"],
  ["ガイド", "ガイド"],
])("%s: %s (Unicode decomposition)", (word, folded) => {
  expect(foldWord(word)).toBe(folded);
});
