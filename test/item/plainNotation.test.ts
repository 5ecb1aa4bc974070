import { expect, it } from "vitest";
import { plainNotation } from "../../src/item/plainNotation";

const plain = (text: string, ...languages: string[]) =>
  plainNotation(text, new Set(languages)).replace(/\s+/g, " ").trim();

it.each([
  ["50x6T", "50x6 thk", ""],
  ["6061-T6", "6061-T6", ""],
  ["EN24T", "EN24T", ""],
  ["t=9.5 mm", "thk 9.5 mm", ""],
  ["25x25x3EA", "25x25x3 angle", ""],
  ["AL6061-T6", "al 6061-T6", ""],
  ["40S std", "sch 40s", ""],
  ["1.1/2", "1-1/2", "pt"],
  ["1.1/2", "1.1/2", ""],
  ["1.250 mm", "1250 mm", "de"],
  ["1.250 mm", "1.250 mm", ""],
  ["1 250 mm", "1250 mm", "cs"],
  ["60x4 250 mm", "60x4 250 mm", "cs"],
  ["300L", "length 300", "ja"],
  ["45# round", "45号 round", "zh"],
  ["10# u", "10# u", "zh"],
  ["cut mm 750", "cut 750 mm", "it"],
])("%s: %s %s (common practice, no source)", (text, wanted, language) => {
  expect(plain(text, ...(language === "" ? [] : [language]))).toBe(wanted);
});
