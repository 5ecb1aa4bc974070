import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { readPitch } from "../../src/blade/readPitch";
import { check } from "../cutting/fixture";

describe("a tooth pitch", () => {
  it(`is 25.4 / teeth per inch: ${check("U4").input} is ${check("U4").expected} mm (${check("U4").source})`, () => {
    expect(readPitch(2.5).mean).toBeCloseTo(check("U4").expected, 12);
  });

  it(`is longest at its coarse end: ${check("P3").input}, three teeth in ${check("P3").expected} mm`, () => {
    expect((3 * 25.4) / readPitch("4/6").coarse).toBeCloseTo(check("P3").expected, 12);
  });

  it("has the mean of its teeth per inch, as the trade counts (trade pitch steps, common practice, no source)", () => {
    const published: readonly (readonly [string, string])[] = [
      ["14/18", "1.587"],
      ["10/14", "2.117"],
      ["8/12", "2.540"],
      ["6/10", "3.175"],
      ["5/8", "3.908"],
      ["4/6", "5.080"],
      ["3/4", "7.257"],
      ["2/3", "10.160"],
      ["1.4/2", "14.941"],
      ["1.1/1.6", "18.815"],
      ["0.75/1.25", "25.400"],
    ];
    for (const [text, mean] of published)
      expect(Math.abs(readPitch(text).mean - Number(mean)), text).toBeLessThanOrEqual(0.0006);
  });

  it("is read whichever end comes first, with spaces, decimal comma or its unit", () => {
    expect(readPitch("4/3")).toEqual(readPitch("3/4"));
    expect(readPitch(" 3 / 4 tpi")).toEqual(readPitch("3/4"));
    expect(readPitch("0,75/1,25").text).toBe("0.75/1.25");
    expect(readPitch("4").text).toBe(readPitch(4).text);
  });

  it.each([
    [46115, /date/],
    [45720, /date/],
    ["3/4/5", /cannot read/],
    ["", /cannot read/],
    ["coarse", /cannot read/],
    [0, /not a pitch/],
    ["40/50", /not a pitch/],
    ["0.1/0.2", /not a pitch/],
    [-3, /cannot read/],
    ["3-4", /cannot read/],
    [1e300, /./],
    [NaN, /cannot read/],
  ])("%s is refused", (value, says) => {
    expect(() => readPitch(value)).toThrow(InputError);
    expect(() => readPitch(value)).toThrow(says);
  });

  it.each([
    ["6.10"],
    ["10.14"],
    ["3.4"],
    ["5,8"],
    [3.4],
    [2 / 3],
    [4 / 6],
    [5 / 8],
    [6 / 10],
    [10 / 14],
    [14 / 18],
    [0.67],
  ])(
    "%s is no straight pitch, but a variable one without its slash or divided by the sheet (common practice, no source)",
    (value) => {
      expect(() => readPitch(value)).toThrow(/not a straight pitch/);
    },
  );

  it.each([0.75, 1, 1.25, 1.3, 1.4, 2, 2.5, 3, 3.5, 4, 6, 8, 10, 14, 18, 24, 32])(
    "%d straight is made (common practice, no source)",
    (teeth) => {
      expect(readPitch(teeth).mean).toBeCloseTo(25.4 / teeth, 12);
    },
  );

  it("reads what it prints", () => {
    fc.assert(
      fc.property(fc.integer({ min: 50, max: 3200 }), fc.integer({ min: 50, max: 3200 }), (a, b) => {
        const pitch = readPitch(`${a / 100}/${b / 100}`);
        expect(readPitch(pitch.text)).toEqual(pitch);
      }),
      { seed: 1 },
    );
  });
});
