import { describe, expect, it } from "vitest";
import { readShow } from "../../../functions/bind/show";
import { both, inches, rows } from "./fixture";

describe("what show asks for", () => {
  it("is the main result when it is left out or blank", () => {
    expect(readShow(both, null)).toEqual({ columns: ["half"], card: false });
    expect(readShow(both, [["", null]])).toEqual({ columns: ["half"], card: false });
  });

  it("is a name, a row of names, all, or a card", () => {
    expect(readShow(both, [[" Double "]])).toEqual({ columns: ["double"], card: false });
    expect(readShow(both, [["said", "half"]])).toEqual({ columns: ["said", "half"], card: false });
    expect(readShow(both, [["ALL"]])).toEqual({ columns: ["half", "double", "said"], card: false });
    expect(readShow(both, [["card"]])).toEqual({ columns: ["half", "double", "said"], card: true });
  });

  it("is refused with the names that there are", () => {
    expect(() => readShow(both, [["third"]])).toThrow(/is not a result; choose from/);
    expect(() => readShow(both, [["half"], ["said"]])).toThrow(/one cell or one row of names/);
    expect(() => readShow(both, [["half", ""]])).toThrow(/has an empty cell among its names/);
    expect(() => readShow(both, [["half", 3]])).toThrow(/is not text/);
  });

  it("is nothing to ask of one result, or of a table", () => {
    expect(readShow(inches, null)).toEqual({ columns: [""], card: false });
    expect(readShow(rows, null)).toEqual({ columns: ["depth", "said"], card: false });
  });
});
