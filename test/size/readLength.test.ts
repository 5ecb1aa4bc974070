import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { readLength } from "../../src/size/readLength";
import { refusal } from "../section/fixture";

describe("lengths (1 ft = 12 in = 304.8 mm by definition)", () => {
  it.each([
    ["20 ft", 6096],
    ["21ft", 6400.8],
    ["20'", 6096],
    ["20 FT.", 6096],
    [`8'-6"`, 102 * 25.4],
    ["8' 6", 102 * 25.4],
    [`8'6-1/2"`, 102.5 * 25.4],
    [`20' 0"`, 6096],
    ["12 ft 6 in", 150 * 25.4],
    ["12 feet, 6 inches", 150 * 25.4],
    [`240"`, 6096],
    ["9-1/4", 9.25 * 25.4],
    ["9 ¼", 9.25 * 25.4],
    ["3/4", 0.75 * 25.4],
    ["6 m", 6000],
    ["1m", 1000],
    ["2,5 m", 2500],
    ["1 m 50 cm", 1500],
    ["2 m 5 cm 3 mm", 2053],
    ["2500 mm", 2500],
    ["20’", 6096],
    ["8′–6″", 102 * 25.4],
  ])("%s is %d mm under either default", (text, mm) => {
    expect(readLength(text, "inch")).toBeCloseTo(mm, 9);
    expect(readLength(text, "metric")).toBeCloseTo(mm, 9);
  });
  it.each([
    ["12.5", 12.5],
    ["240", 240],
    ["0", 0],
    [12.5, 12.5],
    [0, 0],
    [45720, 45720], // a length may be any number: only a size is a date here
  ] as const)("%s is in the default unit", (value, number) => {
    if (number * 25.4 <= 1e6) expect(readLength(value, "inch")).toBeCloseTo(number * 25.4, 9);
    expect(readLength(value, "metric")).toBeCloseTo(number, 9);
  });
});

describe("refusals", () => {
  it.each([
    ["", "no length given"],
    ["  ", "no length given"],
    ["abc", 'cannot read "abc" as a length'],
    ["20ft long", "cannot read"],
    ["20 furlongs", '"furlongs"'],
    ["1,250", "could mean 1.250 or 1250"],
    ["1e3 mm", "scientific notation"],
    ["-5", "cannot be negative"],
    ["2-1/2 mm", "fractions are only read as inches"],
    ["12' 144\"", "less than 12"],
    ["8'-12\"", "less than 12"],
    ["6 m 6000 mm", "less than a metre"],
    ["6 in 2 ft", "cannot add up"],
    ["1 m 2 in", "cannot add up"],
    ["6 m 20", "cannot add up"],
    ["6 ft 6 ft", "cannot add up"],
    ["4-Mar", "is a date"],
    ["9/1/2004", "is a date"],
    ["#N/A", "the Excel error #N/A"],
    ["5/4/2 in", "not a proper inch fraction"],
    ["1/0", "divides by zero"],
    ["9999999 m", "longer than a kilometre"],
    ["7".repeat(121), "at most 120 characters"],
  ])("%s: %s", (text, part) => {
    const { reason, parameter, sentence } = refusal(() => readLength(text, "inch"));
    expect(sentence).toContain(part);
    expect([reason, parameter]).toEqual(["invalid", "length"]);
  });
  it.each([-1, NaN, Infinity, 1e9])("the number %d", (value) => {
    expect(refusal(() => readLength(value, "metric")).reason).toBe("invalid");
  });
});

describe("laws", () => {
  it("feet and inches, inches, and metres agree", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 99 }),
        fc.integer({ min: 0, max: 11 }),
        fc.integer({ min: 1, max: 15 }),
        (feet, inches, sixteenths) => {
          const mm = (feet * 12 + inches + sixteenths / 16) * 25.4;
          expect(readLength(`${feet}' ${inches}-${sixteenths}/16"`, "metric")).toBeCloseTo(mm, 6);
          expect(readLength(`${feet * 12 + inches + sixteenths / 16} in`, "metric")).toBeCloseTo(mm, 6);
          expect(readLength(`${(mm / 1000).toFixed(9)} m`, "inch")).toBeCloseTo(mm, 5);
        },
      ),
      { seed: 3, numRuns: 200 },
    );
  });
  it("any text gives a length or an InputError", () => {
    const bits = fc.constantFrom(
      "1",
      "20",
      "3/4",
      "-",
      " ",
      "'",
      '"',
      "ft",
      "in",
      "m",
      "mm",
      ",",
      ".",
      "e",
      "x",
      "constructor",
      "½",
      "0",
    );
    fc.assert(
      fc.property(fc.array(bits, { maxLength: 8 }), (parts) => {
        try {
          const mm = readLength(parts.join(""), "inch");
          expect(mm >= 0 && mm <= 1e6).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
        }
      }),
      { seed: 4, numRuns: 5000 },
    );
  });
});
