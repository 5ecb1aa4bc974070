import { expect, it } from "vitest";
import { nearestWord } from "../../src/size/nearestWord";

it.each([
  ["roud", "round"],
  ["hexx", "hex"],
  ["sqare", "square"],
  ["octogon", "octagon"],
  ["bannana", undefined],
  ["ro", undefined],
])("%s: %s (definition: one edit per three letters)", (word, near) => {
  expect(nearestWord(word, ["round", "hex", "square", "octagon", "w", "rd"])).toBe(near);
});
