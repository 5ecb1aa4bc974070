import { expect, it } from "vitest";
import { openLine } from "../../src/item/openLine";

const texts = (line: string) =>
  openLine(line)
    .atoms.map(({ text }) => text)
    .join(" ");

it.each([
  ["Vierkantrohr 40x40x3", "square tube 40 x 40 x 3"],
  ["Полоса 40х8 ст3 10 шт", "flat 40 x 8 ст3 10 pcs"],
  ["50x50x5EA", "50 x 50 x 5 angle"],
  ['round 2" (50.8 mm)', 'round 2 "'],
])("%s: %s (common practice, no source)", (line, atoms) => {
  expect(texts(line)).toBe(atoms);
});
it("names what stops the reading of a size (common practice, no source)", () => {
  expect(openLine("Nylon rod 2").stop).toEqual({ kind: "not metal", word: "Nylon" });
  expect(openLine("2L4X3X1/4").stop?.word).toBe("2L");
  expect(openLine("Швеллер 12").series).toBe("Швеллер 12");
});
