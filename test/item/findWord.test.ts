import { expect, it } from "vitest";
import { findWord } from "../../src/item/findWord";

const meanings = (word: string) => [...new Set(findWord(word).map(({ meaning }) => meaning))].sort().join();

it.each([
  ["rohr", "tube"],
  ["kesselrohr", "tube"],
  ["stalowego", "steel"],
  ["praezisionsrohr", "tube"],
  ["rondbuis", "round+tube"], // Dutch rond, buis
  ["messingrohr", "brass+tube"], // German Messing, Rohr
  ["edelstahlrohr", "stainless+tube"],
  ["quorbalo", ""],
  ["constructor", ""],
  ["", ""],
])("%s: %s (src/data/lineWords.ts)", (word, meaning) => {
  expect(meanings(word)).toBe(meaning);
});
it("a compound whose head is known means both (definition)", () => {
  expect(findWord("vierkantbuis").some(({ meaning }) => meaning.includes("tube") || meaning.includes("square"))).toBe(
    true,
  );
});
