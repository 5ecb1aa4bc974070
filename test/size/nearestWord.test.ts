import { expect, it } from "vitest";
import { nearestWord } from "../../src/size/nearestWord";

it.each([
  ["roud", "round"],
  ["hexx", "hex"],
  ["sqare", "square"],
  ["octogon", "octagon"],
  ["bannana", undefined],
  ["ro", undefined],
  ["red", undefined], // rd is one edit away, but has two letters
])("%s: %s (definition: one edit per three letters)", (word, near) => {
  expect(nearestWord(word, ["round", "hex", "square", "octagon", "w", "rd"])).toBe(near);
});
