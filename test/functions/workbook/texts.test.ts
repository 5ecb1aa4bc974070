import { describe, expect, it } from "vitest";
import { addressOf, areaOf, columnName, columnOf } from "../../../functions/formula/cellAddress";
import { fromFile, toFile } from "../../../functions/workbook/formulaText";
import { withTables, withoutTables } from "../../../functions/workbook/structured";
import type { BookTable } from "../../../functions/workbook/book";

describe("formulas as files keep them (names of custom functions: from public issue threads, not seen in Excel)", () => {
  it.each([
    ["_xldudf_SAW_CUTTIME(A2,2.14)", "SAW.CUTTIME(A2,2.14)"],
    ["SUM(_xldudf_SAW_AREA(A2),_xldudf_SAW_AREA(A3))*2", "SUM(SAW.AREA(A2),SAW.AREA(A3))*2"],
    ['IF(A1="_xldudf_SAW_AREA(x)",_xlfn.XLOOKUP(1,B:B,C:C),2)', 'IF(A1="_xldudf_SAW_AREA(x)",XLOOKUP(1,B:B,C:C),2)'],
    ["_xlfn._xlws.FILTER(A1:A3,B1:B3)", "FILTER(A1:A3,B1:B3)"],
  ])("%s is typed %s, and back", (file, typed) => {
    expect(fromFile(file)).toBe(typed);
    expect(toFile(`=${typed}`)).toBe(file);
  });
  it.each([
    ["[2]!_xldudf_SAW_AREA(A2)", "SAW.AREA(A2)"],
    ["_xldudf_saw_area (A2)", "SAW.AREA (A2)"],
    ["_xll.SAW.AREA(A2)", "SAW.AREA(A2)"],
    ["_xldudf_OTHER_THING(A2)", "OTHER_THING(A2)"],
    ["_xlfn.LET(_xlpm.x,1,_xlpm.x+1)", "LET(x,1,x+1)"],
  ])("%s is read as %s", (file, typed) => expect(fromFile(file)).toBe(typed));
  it("a sheet's name in quotes is not a call", () =>
    expect(toFile("'SAW.AREA(x)'!A1+saw.area(B1)")).toBe("'SAW.AREA(x)'!A1+_xldudf_SAW_AREA(B1)"));
});

describe("references to tables (forms of the standard's part on formulas, ECMA-376-1, 18.17)", () => {
  const lines: BookTable = {
    name: "Lines",
    sheet: "It's",
    area: { top: 1, left: 1, bottom: 6, right: 3 },
    columns: ["size", "cut minutes", "a]b"],
    headers: true,
    totals: true,
  };
  it.each([
    ["SUM(Lines[size])", "SUM('It''s'!$B$3:$B$6)"],
    ["Lines[[#This Row],[cut minutes]]*2", "'It''s'!$C$5*2"],
    ["Lines[@size]", "'It''s'!$B$5"],
    ["Lines[@[cut minutes]]", "'It''s'!$C$5"],
    ["SUM(Lines[[size]:[cut minutes]])", "SUM('It''s'!$B$3:$C$6)"],
    ["Lines[[#Totals],[size]]", "'It''s'!$B$7"],
    ["Lines[[#Headers],[#Data],[size]]", "'It''s'!$B$2:$B$6"],
    ["ROWS(Lines[#All])", "ROWS('It''s'!$B$2:$D$7)"],
    ["COUNTA(lines[])", "COUNTA('It''s'!$B$3:$D$6)"],
    ["Lines[a']b]", "'It''s'!$D$3:$D$6"],
    ['"Lines[size]"&Lines[@size]', `"Lines[size]"&'It''s'!$B$5`],
    ["[1]Prices!A1+Other[size]", "[1]Prices!A1+Other[size]"],
  ])("%s", (typed, plain) => expect(withoutTables(typed, [lines], { sheet: "Quote", row: 4 })).toBe(plain));
  it("on its own sheet without the sheet's name", () =>
    expect(withoutTables("Lines[@size]*SUM(Lines[size])", [lines], { sheet: "It's", row: 4 })).toBe(
      "$B$5*SUM($B$3:$B$6)",
    ));
  it.each([
    ["SAW.AREA($B5,C$2)", "SAW.AREA(Lines[[#This Row],[size]],Lines[[#Headers],[cut minutes]])"],
    [
      '"B5"&B5&Other!B5&B6&E5&SUM(B5:C5)&D5',
      `"B5"&Lines[[#This Row],[size]]&Other!B5&B6&E5&SUM(B5:C5)&Lines[[#This Row],[a']b]]`,
    ],
  ])("inside a table %s names its columns, and reads back as the same cells", (plain, named) => {
    expect(withTables(plain, lines, { sheet: "It's", row: 4 })).toBe(named);
    expect(withoutTables(named, [lines], { sheet: "It's", row: 4 }).replace(/\$/g, "")).toBe(plain.replace(/\$/g, ""));
  });
  it.each(["Lines[weight]", "Lines[#Foot]"])("%s is refused, not guessed", (typed) =>
    expect(() => withoutTables(typed, [lines], { sheet: "Quote", row: 4 })).toThrow(/names a/),
  );
});

describe("addresses", () => {
  it.each([
    [0, "A"],
    [25, "Z"],
    [26, "AA"],
    [701, "ZZ"],
    [702, "AAA"],
    [16_383, "XFD"],
  ] as const)("column %d is %s", (n, letters) => {
    expect(columnName(n)).toBe(letters);
    expect(columnOf(letters)).toBe(n);
  });
  it("areas", () => {
    expect(areaOf("$B$2:C5")).toEqual({ top: 1, left: 1, bottom: 4, right: 2 });
    expect(areaOf("A:B")).toBeUndefined();
    expect(addressOf(4, 27)).toBe("AB5");
  });
});
