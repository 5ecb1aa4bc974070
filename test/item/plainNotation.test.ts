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
  ["1 250mm", "1250mm", "cs"],
  ["12 500 mm", "12500 mm", "cs"],
  ["1 250 mm long", "1250 mm long", "cs"],
  ["1 250 mmx", "1 250 mmx", "cs"],
  ["123 250 mm", "123 250 mm", "cs"],
  ["0 250 mm", "0 250 mm", "cs"],
  ["3 1 250 mm", "3 1 250 mm", "cs"],
  ["1.250 mm long", "1250 mm long", "de"],
  ["1.250mm", "1250mm", "de"],
  ["12.500 mm", "12500 mm", "de"],
  ["123.500 mm", "123.500 mm", "de"],
  ["0.250 mm", "0.250 mm", "de"],
  ["1.250 mmx", "1.250 mmx", "de"],
  ["1.25 mm", "1.25 mm", "de"],
  ["1.250 mm 3,5", "1250 mm 3,5", "cs"],
  ["1.250 mm", "1.250 mm", "cs"],
  ["12.3/4", "12-3/4", "pt"],
  ["123.3/4", "123.3/4", "pt"],
  ["50x6,5 t", "50x6,5 thk", ""],
  [".5t 50", ".5 thk 50", ""],
  ["50 x 6t", "50 x 6 thk", ""],
  ["6tx", "6tx", ""],
  ["6t5", "6t5", ""],
  ["t:9", "thk 9", ""],
  ["t 9", "t 9", ""],
  ["50x50x5 ua", "50x50x5 angle", ""],
  ["50,5x50x5ea", "50,5x50x5 angle", ""],
  ["50x5ea", "50x5ea", ""],
  ["50x50x5eax", "50x50x5eax", ""],
  ["al-6061", "al 6061", ""],
  ["al 60611", "al 60611", ""],
  ["al9061", "al9061", ""],
  ["160s std", "sch 160s", ""],
  ["40s stdx", "40s stdx", ""],
  ["20mml=300", "20 mm l=300", ""],
  ["l. 35", "l=35", ""],
  ["l.35", "l=35", ""],
  ["xl. 35", "xl. 35", ""],
  ["a mm750", "a 750 mm", ""],
  ["5 mm 750", "5 mm 750", ""],
  ["mm 750 mm", "mm 750 mm", ""],
  ["mm 7,5", "7,5 mm", ""],
  ["50x50x5/S235", "50x50x5 S235", ""],
  ["50x5,5/S235", "50x5,5 S235", ""],
  ["50/S235", "50/S235", ""],
  ["hollow 50x50x3", "box 50x50x3", ""],
  ["hollow 50x3", "hollow 50x3", ""],
  ["length min. 120", "length 120", ""],
  ["length: max 120", "length: 120", ""],
  ["min 120", "min 120", ""],
  ["50 pcs de 40 mm", "50 pcs length 40 mm", ""],
  ["50 bars of 6 m", "50 bars length 6 m", ""],
  ["50 pcs of 40", "50 pcs of 40", ""],
  ["50 pcs of 40 mmx", "50 pcs of 40 mmx", ""],
  ["t5", "thk 5", "ja"],
  ["t123", "t123", "ja"],
  ["50Ø", "Ø50", "ko"],
  ["50,5L", "50,5L", "zh"],
  ["3L", "3L", "zh"],
  ["300Lx", "300Lx", "zh"],
  ["145#", "145#", "zh"],
  ["beam 45#", "beam 45", "zh"],
  ["300L", "300L", "de"],
  ["60x4 250 mm", "60x4 250 mm", "cs"],
  ["300L", "length 300", "ja"],
  ["45# round", "45号 round", "zh"],
  ["10# u", "10 u", "zh"],
  ["cut mm 750", "cut 750 mm", "it"],
])("%s: %s %s (common practice, no source)", (text, wanted, language) => {
  expect(plain(text, ...(language === "" ? [] : [language]))).toBe(wanted);
});

it("only where every language of the line writes so", () => {
  expect(plain("1.1/2", "pt", "de")).toBe("1.1/2");
  expect(plain("1.250 mm", "de", "en")).toBe("1.250 mm");
  expect(plain("300L", "ja", "de")).toBe("300L");
});
it.each(["de", "di", "da", "van", "of", "po", "a", "à", "á"])("50 pcs %s 40 mm: the length of a piece", (word) => {
  for (const unit of ["mm", "cm", "m", "in", "'", '"'])
    expect(plain(`50 pcs ${word} 40 ${unit}`)).toBe(`50 pcs length 40 ${unit}`);
});
