import { ArrayValueObject } from "@univerjs/engine-formula";
import { describe, expect, it } from "vitest";
import { correctEngine } from "../../../functions/workbook/correctEngine";
import { recalcColumn } from "./fixture";

/**
 * Array constants as the grammar of ECMA-376-1, 18.17.2, writes them: commas part columns, semicolons rows, quotes hold a
 * text. That a text stays one, and counts as a number only where a number is asked for: from memory of the same part.
 */

correctEngine();

const valuesOf = (constant: string): unknown[][] =>
  ArrayValueObject.create(constant)
    .getArrayValue()
    .map((row) =>
      row.map((cell) =>
        cell === null || cell === undefined || cell.isNull() ? null : cell.isError() ? "error" : cell.getValue(),
      ),
    );

describe("an array written into a formula", () => {
  it.each([
    ['{"3/4";"2/3"}', [["3/4"], ["2/3"]]],
    [
      '{"2/3, 3/4","a;b"; "say ""so""", 1.5}',
      [
        ["2/3, 3/4", "a;b"],
        ['say "so"', 1.5],
      ],
    ],
    ["{1,-2;3e2,.5}", [[1, -2], [300, 0.5]]], // prettier-ignore
    ['{"304","1-2"}', [["304", "1-2"]]],
    ["{TRUE,#N/A;,}", [[true, "error"], [null, null]]], // prettier-ignore
    ['{"{a}"}', [["{a}"]]],
    ["{1,2;3}", [[1, 2], [3, null]]], // prettier-ignore
  ])("%s", (constant, expected) => {
    expect(valuesOf(constant)).toEqual(expected);
  });

  it("is so in a workbook's formulas too: recalc finds these results right", () => {
    const cells: readonly (readonly [formula: string, value: string | number])[] = [
      ['INDEX({"3/4";"a, b; c"},1)', "3/4"],
      ['INDEX({"3/4";"a, b; c"},2)', "a, b; c"],
      ['COLUMNS({"a, b","c;d"})', 2],
      ['ROWS({"a, b","c;d"})', 1],
      ['INDEX({"x}y",2},2)', 2],
      ['COUNTA({"1/2","2/3";"3/4","4/6"})', 4],
      ['SUM({1,-2;3,"4"})', 2],
      ['IF(TRUE,"3/4","2/3")', "3/4"],
      ['IFERROR("3/4","x")', "3/4"],
      ['CHOOSE(1,"1-2","x")', "1-2"],
      ['SWITCH(1,1,"2/3")', "2/3"],
      ['IFS(TRUE,"10/14")', "10/14"],
      ['T("3/4")', "3/4"],
      ['TEXTJOIN(", ",TRUE,"2/3","3/4")', "2/3, 3/4"],
      ['UPPER("1-mar")', "1-MAR"],
      ['MATCH("3/4",A8:A9,0)', 1],
      ['IF(A8="3/4","yes","no")', "yes"],
      // Where a number is asked for, a text that is one counts: dates by the calendar, 2026-11-25 is day 46351.
      ['SUM("2","3")', 5],
      ['SUM("2026-11-25",1)', 46352],
      ['DAY("2026-11-25")', 25],
      ['"2026-11-25"+0', 46351],
      ['ROUND("20%",2)', 0.2],
      ['TEXT("2026-11-25","yyyy")', "2026"],
      ['DATEVALUE("2026-11-25")', 46351],
    ];
    const run = recalcColumn(cells);
    expect(run.stdout).toMatch(new RegExp(`: ${cells.length} cells calculated, 0 differ`));
    expect(run.status).toBe(0);
  });
});
