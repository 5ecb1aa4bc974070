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
  ["50х60х5", "50x60x5"],
  ["50Х5", "50x5"],
  ["50 х 5.5", "50 x 5.5"],
  ["5х.5", "5x.5"],
  ['2"х4"', '2"x4"'],
  ['2" х 4', '2" x 4'],
  ["10ммх20мм", "10ммx20мм"],
  ["100х4мм", "100x4мм"],
  ["100х4 mm", "100x4 mm"],
  ["6х2м", "6x2м"],
  ["12Х18Н10Т", "12х18н10т"], // a steel of GOST 5632, no size
  ["х18", "х18"],
  ["½", "1/2"],
  ["××", "xx"],
  ["", ""],
])("%s becomes %s (common practice, no source)", (text, plain) => {
  expect(normaliseSize(text)).toBe(plain);
});
