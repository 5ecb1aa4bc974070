import { expect, it } from "vitest";
import { translateLine } from "../../src/item/translateLine";

const translate = (line: string) => translateLine(line).text.replace(/\s+/g, " ").trim();

it.each([
  ["Tube carré 50x50x3, 6 barres", "tube square 50x50x3, 6 bars"],
  ["角钢 50×5 3支", "angle 50×5 3 pcs"],
  ["Köşebent 50x50x5 4 boy", "angle 50x50x5 4 bars"],
  ["Lama 50x10 boy 1200 mm", "flat 50x10 length 1200 mm"],
  ["St 37 round 50", "St 37 round 50"],
  // Stück is no steel, even before the number of one; German Stange and French barre count only behind a number.
  ["Rund 20 Stück 37", "round 20 pcs 37"],
  ["barres 50x5", "bar 50x5"],
  ["50x5 barres", "50x5 bar"],
  ["3 barres 50x5", "3 bars 50x5"],
  ["(3 barres)", "(3 bars)"],
  ["RD 3 4140 RUSH", "RD 3 4140 RUSH"],
])("%s: %s (src/data/lineWords.ts)", (line, text) => {
  expect(translate(line)).toBe(text);
});
it("a word takes the meaning of the language beside it (src/data/lineWords.ts)", () => {
  expect(translate("Pręt okrągły fi 50 gr 6")).toContain("wall 6");
  expect([...translateLine("Płaskownik 40x5").languages]).toEqual(["pl"]);
});
it("goods, plastics and other shapes stop the reading; spring steel does not (src/data/lineWords.ts)", () => {
  expect(translateLine("hex bolt M12").stop?.kind).toBe("goods");
  expect(translateLine("POM Ø40").stop?.kind).toBe("not metal");
  expect(translateLine("bearing bronze round 2").stop).toBeUndefined();
});
