import { expect, it } from "vitest";
import { lengthRange } from "../../src/item/lengthRange";
import { sentence } from "./fixture";
import { lineOf } from "./line";

it.each([
  ["300-320 mm", 2, 3, "320 mm", "from 300 to 320 mm"],
  ["300-320 mm", 0, 0, "300", "from 300 to 320"],
  ['6"/8"', 3, 4, '8"', 'from 6 to 8"'],
])("%s: atoms %d to %d are an end of a range (common practice, no source)", (line, from, to, text, told) => {
  expect(sentence(lengthRange(lineOf(line), { from, to, text }))).toContain(told);
});

it.each([
  ["round 300 - 320 mm", 3, 4, "320 mm"],
  ["300 mm", 0, 1, "300 mm"],
])("%s: no range", (line, from, to, text) => {
  expect(lengthRange(lineOf(line), { from, to, text })).toBeUndefined();
});
