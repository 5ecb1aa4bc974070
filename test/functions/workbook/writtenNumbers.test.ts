import { expect, it } from "vitest";
import { recalcColumn } from "./fixture";

/** Numbers as ECMA-376-1, 18.17.2, lets them be written; each formula's value by hand. Minutes: area by rate. */
const cells: readonly (readonly [formula: string, value: string | number])[] = [
  ['IF(1>0.50,"more","less")', "more"],
  ['IF(12.5=12.50,"same","other")', "same"],
  ['IF(2000>1E3,"more","less")', "more"],
  ['IF(1>.5,"more","less")', "more"],
  ["1.50*2", 3],
  ["TYPE(1.50)", 1],
  ['SAW.AREA("flat 6x1")', 6],
  ['SAW.CUTTIME("flat 6x1",2.50)', 2.4],
  ['SAW.CUTTIME("flat 6x1",.5)', 12],
  ['SAW.CUTTIME("flat 6x1",1E0)', 6],
  ['SAW.CUTTIME("flat 6x1",2.0)', 3],
];

it("a number in a formula is one however it is written, for our functions and for the spreadsheet's own", () => {
  const { status, stdout } = recalcColumn(cells);
  expect([status, stdout]).toEqual([0, expect.stringContaining(" 0 differ ")]);
});
