import { describe, expect, it } from "vitest";
import { sizeNumber } from "../../src/size/sizeNumber";
import { refusal } from "../section/fixture";

describe("sizeNumber", () => {
  it.each([
    ["7", 7, false],
    ["0.5", 0.5, false],
    [".5", 0.5, false],
    ["6,5", 6.5, false],
    ["0,125", 0.125, false],
    ["12,7000", 12.7, false],
    ["3/4", 0.75, true],
    ["7-1/2", 7.5, true],
    ["7 1/2", 7.5, true],
    ["7 - 1/2", 7.5, true],
    ["1-63/64", 1 + 63 / 64, true],
    ["007", 7, false],
  ])("%s is %d", (text, value, fraction) => {
    expect(sizeNumber(`${text} x`, 0, "section")).toMatchObject({ value, fraction, end: text.length });
  });
  it("every 64th to 2 inches (definition)", () => {
    for (let n = 1; n < 64; n++) expect(sizeNumber(`1-${n}/64`, 0, "section").value).toBe(1 + n / 64);
  });
  it.each([
    ["2-5/4", "not a proper inch fraction"],
    ["1/128", "not a proper inch fraction"],
    // A hollow bar 60/50 (outside/inside in mm) and a due date 12/05; thirds and tenths are no inch fractions: common practice, no source.
    ["60/50", "not a proper inch fraction"],
    ["50/60", "not a proper inch fraction"],
    ["12/05", "not a proper inch fraction"],
    ["5/6", "not a proper inch fraction"],
    ["9/10", "not a proper inch fraction"],
    ["2-1/3", "not a proper inch fraction"],
    ["1/2/3", "not a proper inch fraction"],
    ["1/0", "divides by zero"],
    ["1,250", '"1,250" could mean 1.250 or 1250'],
    ["1e3", "scientific notation"],
    ["1.2.3", "two points or commas"],
  ])("%s is refused: %s", (text, part) => {
    const found = refusal(() => sizeNumber(text, 0, "length"));
    expect(found.sentence).toContain(part);
    expect(found.parameter).toBe("length");
  });
});

it.each([
  ["1.2.3", '"1.2.3" is not one number: it has two points or commas'],
  ["1,250", '"1,250" could mean 1.250 or 1250; write it with a point or without the comma'],
  ["1e5", '"1e5" looks like scientific notation; write the number out in full and format the cell as Text'],
  ["2-5/4", '"2-5/4" is not a proper inch fraction; write it like 2-1/2'],
])("%s is refused whole: %s", (text, sentence) => {
  expect(refusal(() => sizeNumber(text, 0, "section"))).toEqual({ reason: "invalid", parameter: "section", sentence });
});
