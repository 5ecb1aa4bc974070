import { expect, it } from "vitest";
import { normaliseSize } from "../../src/size/normaliseSize";

it.each([
  ["  RND\u00a0 7 ", "rnd 7"],
  ["2½", "2 1/2"],
  ["6 × 4", "6 x 4"],
  ["6*4", "6x4"],
  ["6 х 4 (Cyrillic)", "6 x 4 (cyrillic)"],
  ["7–1⁄2”", '7-1/2"'],
  ["8′ 6″", `8' 6"`],
  ["6''", '6"'],
  ["Ø50", "dia 50"],
  ["45°", "45 deg"],
  ["in²", "in2"],
  ["", ""],
])("%s becomes %s (common practice, no source)", (text, plain) => {
  expect(normaliseSize(text)).toBe(plain);
});
