import { expect, it } from "vitest";
import { foreignName } from "../../src/material/foreignName";
import { findMaterial } from "../../src/material/findMaterial";

it.each([
  ["Messing", "brass"],
  ["ottone", "brass"],
  ["латунь", "brass"],
  ["黄铜", "brass"],
  ["Edelstahl", "304"],
  ["nierdzewna", "304"],
])("%s is taken as %s is (src/data/plainNames.ts)", (word, name) => {
  expect(findMaterial(word, [])).toBe(findMaterial(name, []));
});
it("a word of another meaning names no metal (definition)", () => {
  for (const word of ["Rohr", "round", "", "4140"]) expect(foreignName(word)).toBeUndefined();
});
