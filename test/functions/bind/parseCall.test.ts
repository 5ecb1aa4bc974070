import { describe, expect, it } from "vitest";
import { parseCall } from "../../../functions/bind/parseCall";

describe("a call of literals (ECMA-376-1, 18.17)", () => {
  it.each([
    ["SAW.X()", []],
    ["=SAW.X()", []],
    ["X( )", []],
    ["SAW.X(1)", [[[1]]]],
    ["SAW.X( 1 , 2 )", [[[1]], [[2]]]],
    ["SAW.X(-1.5)", [[[-1.5]]]],
    ["SAW.X(+3)", [[[3]]]],
    ["SAW.X(-1,2)", [[[-1]], [[2]]]],
    ["SAW.X(,)", [null, null]],
    ["SAW.X(,1)", [null, [[1]]]],
    ["SAW.X(1,)", [[[1]], null]],
    ["SAW.X(1,,2)", [[[1]], null, [[2]]]],
    ['SAW.X("a b")', [[["a b"]]]],
    ['SAW.X("2"" ""x")', [[['2" "x']]]],
    ['SAW.X("")', [[[""]]]],
    ['SAW.X("(,){;}=")', [[["(,){;}="]]]],
    ["SAW.X(TRUE,false)", [[[true]], [[false]]]],
    ["SAW.X({1,2;3,4})", [[[1, 2], [3, 4]]]], // prettier-ignore
    ["SAW.X({1})", [[[1]]]],
    ["SAW.X({-1, \"a\"})", [[[-1, "a"]]]], // prettier-ignore
    ["SAW.X({1,;,2})", [[[1, null], [null, 2]]]], // prettier-ignore
    ["SAW.X({,})", [[[null, null]]]],
    ["SAW.X({})", [[[null]]]],
    ["SAW.X({1,2},3)", [[[1, 2]], [[3]]]],
  ])("%s", (formula, args) => {
    expect(parseCall(formula)).toEqual({ name: "X", args });
  });
});
