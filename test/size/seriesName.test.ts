import { expect, it } from "vitest";
import { seriesFamilies } from "../../src/data/seriesWords";
import { readSection } from "../../src/section/readSection";
import { seriesName } from "../../src/size/seriesName";
import { seriesRows } from "../../src/size/seriesRows";
import { rolledArea } from "../../src/size/rolledArea";
import { seriesShape } from "../../src/size/seriesShape";

it("every row's name is read again as the same shape (law)", () => {
  for (const family of seriesFamilies.filter(({ area }) => area === undefined)) {
    for (const row of seriesRows(family)) {
      const area = rolledArea(seriesShape(row));
      const read = readSection(seriesName(row, family.name.startsWith("IS") ? area * 0.00785 : undefined), "inch");
      expect(Math.abs(read.outline === undefined ? 1 : read.area / area - 1), seriesName(row)).toBeLessThan(0.01);
    }
  }
});

it.each([
  ["AU UC", "310UC96.8"],
  ["AU PFC", "150PFC"],
  ["GB I", "GB I20a"],
  ["GOST У", "GOST 16аУ"],
  ["KS H", "KS H 200x100x5.5x8"],
  ["ISMB", "ISMB 200"],
])("%s: %s (the spelling of its standard)", (name, text) => {
  const names = seriesFamilies
    .filter((family) => family.name === name)
    .flatMap((family) => seriesRows(family).map((row) => seriesName(row)));
  expect(names).toContain(text);
});
