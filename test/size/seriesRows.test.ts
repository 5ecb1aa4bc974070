import { expect, it } from "vitest";
import { seriesFamilies } from "../../src/data/seriesWords";
import { seriesRows } from "../../src/size/seriesRows";

const rows = (name: string, first?: number) =>
  seriesFamilies.filter((family) => family.name === name).flatMap((family) => seriesRows(family, first));

it("H sections of Japan and China and those of Korea are rows of one table (JIS G 3192, KS D 3502)", () => {
  expect([rows("JIS H").length, rows("GB H").length, rows("KS H").length]).toEqual([119, 119, 83]);
});

it("rows of one depth (AS/NZS 3679.1: three of 460UB)", () => {
  expect(rows("AU UB", 460).map(({ cells }) => cells[1])).toEqual([67.1, 74.6, 82.1]);
  expect(rows("AU UB", 46)).toEqual([]);
});
