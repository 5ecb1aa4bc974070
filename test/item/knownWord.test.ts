import { expect, it } from "vitest";
import { knownWord } from "../../src/item/knownWord";

it.each([
  ["round", "size"],
  ["od", "size"],
  ["xxs", "size"],
  ["tgp", "size"],
  ["bundle", "size"],
  ["nos", "line"],
  ["qty", "line"],
  ["stainless", "line"],
  ["po", "line"],
  ["urgent", undefined],
  ["constructor", undefined],
  ["__proto__", undefined],
  ["", undefined],
])("%s is %s (common practice, no source)", (word, whose) => {
  expect(knownWord(word)).toBe(whose);
});
