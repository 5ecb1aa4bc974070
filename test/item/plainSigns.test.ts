import { expect, it } from "vitest";
import { plainSigns } from "../../src/item/plainSigns";

it.each([
  ["Φ50 φ50 ⌀50", "Ø50 Ø50 Ø50"],
  ["ф50", "Ø50"],
  ["профиль", "профиль"],
  ["40х20х2 мм", "40x20x2 мм"],
  ["40 х 20", "40 x 20"],
  ["40Х", "40Х"],
  ["12Х18Н10Т", "12Х18Н10Т"],
  ["ＲＤ５０", "RD50"],
  ["сталь 20", "ст20"],
])("%s: %s (common practice, no source)", (line, plain) => {
  expect(plainSigns(line)).toBe(plain);
});
