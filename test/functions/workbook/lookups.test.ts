import { expect, it } from "vitest";
import { recalcColumn } from "./fixture";

/** From memory: in ascending order blank cells are passed over, and of equal cells the last counts. */
it("a blank cell behind a 0 is no 0, and of equal cells the last is found", () => {
  const { status, stdout } = recalcColumn([
    ["0+0", 0],
    ["MATCH(0,A1:C1)", 1],
    ["MATCH(5,A1:C1)", 1],
    ["MATCH(2,{1,2,2,3})", 3],
    ["MATCH(2.5,{1,2,2,3})", 3],
  ]);
  expect([status, stdout]).toEqual([0, expect.stringContaining(" 0 differ ")]);
});
