import { describe, expect, it } from "vitest";
import { textRows } from "../../../functions/workbook/textRows";

/** Rows as RFC 4180 quotes them; lines of a mail with inch marks: common practice, no source. All lines are invented. */
const cells = (text: string) => textRows(text).rows;

describe("lines of text as rows of cells", () => {
  it.each<[what: string, text: string, rows: readonly (readonly (string | number)[])[]]>([
    ["a mail with inch marks", '2" rd 1018 x 6"\n3/8" flat', [['2" rd 1018 x 6"'], ['3/8" flat']]],
    [
      "one column, quoted for its comma",
      'line\r\n"5,000 pcs 20 mm round 304"\r\n',
      [["line"], ["5,000 pcs 20 mm round 304"]],
    ],
    ["one column, quoted for its inch marks", '"2"" rd 1018 x 6"""\nRund 60', [['2" rd 1018 x 6"'], ["Rund 60"]]],
    ["a mark at both ends that quotes nothing", '"A" or 2"', [['"A" or 2"']]],
    [
      "two columns",
      '"round 7, sawn",20\nround 4,5',
      [
        ["round 7, sawn", 20],
        ["round 4", 5],
      ],
    ],
    [
      "semicolons",
      "round 7;1,5\nround 4;2",
      [
        ["round 7", "1,5"],
        ["round 4", 2],
      ],
    ],
    ["tabs", "2/3\t007\t1.50", [["2/3", "007", 1.5]]],
  ])("%s", (_, text, rows) => {
    expect(cells(text)).toEqual(rows);
  });
});
