import { expect, it } from "vitest";
import { wordUnits } from "../../src/item/wordUnits";

const words = (line: string) =>
  wordUnits(line)
    .filter(({ word }) => word !== "")
    .map(({ text, rows }) => `${text}:${String(rows.length > 0)}`)
    .join(" ");

it.each([
  ["sem costura", "sem costura:true"],
  ["ERW-Rohr", "ERW-Rohr:true"],
  ["無印角パイプ", "無印:false 角:true パイプ:true"],
  ["U-Profil", "U-Profil:true"],
])("%s: %s (definition)", (line, units) => {
  expect(words(line).replace(/ -:false/g, "")).toContain(units.split(" ")[0]!);
});
