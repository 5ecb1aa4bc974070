import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { readPitch } from "../../src/cutting/readPitch";
import { check } from "./fixture";

describe("a tooth pitch", () => {
  it(`is 25.4 / teeth per inch: ${check("U4").input} is ${check("U4").expected} mm (${check("U4").source})`, () => {
    expect(readPitch(2.5).mean).toBeCloseTo(check("U4").expected, 12);
  });

  it(`is longest at its coarse end: ${check("P3").input}, three teeth in ${check("P3").expected} mm`, () => {
    expect(3 * readPitch("4/6").greatest).toBeCloseTo(check("P3").expected, 12);
  });

  it("has the mean of its teeth per inch, as the trade counts (trade pitch steps, common practice, no source)", () => {
    const published: readonly (readonly [string, string])[] = [["14/18", "1.587"], ["10/14", "2.117"], ["8/12", "2.540"], ["6/10", "3.175"], ["5/8", "3.908"], ["4/6", "5.080"], ["3/4", "7.257"], ["2/3", "10.160"], ["1.4/2", "14.941"], ["1.1/1.6", "18.815"], ["0.75/1.25", "25.400"]];
    for (const [text, mean] of published) expect(Math.abs(readPitch(text).mean - Number(mean)), text).toBeLessThanOrEqual(0.0006);
  });

  it("is read whichever end comes first, with spaces, decimal comma or its unit", () => {
    expect(readPitch("4/3")).toEqual(readPitch("3/4"));
    expect(readPitch(" 3 / 4 tpi")).toEqual(readPitch("3/4"));
    expect(readPitch("0,75/1,25").text).toBe("0.75/1.25");
    expect(readPitch("4").text).toBe(readPitch(4).text);
  });

  it.each([[46115, /date/], [45720, /date/], ["3/4/5", /cannot read/], ["", /cannot read/], ["coarse", /cannot read/], [0, /not a pitch/], ["40/50", /not a pitch/], ["0.1/0.2", /not a pitch/], [-3, /cannot read/], ["3-4", /cannot read/], [1e300, /./], [NaN, /cannot read/]])("%s is refused", (value, says) => {
    expect(() => readPitch(value)).toThrow(InputError);
    expect(() => readPitch(value)).toThrow(says);
  });

  it("reads what it prints", () => {
    fc.assert(fc.property(fc.integer({ min: 50, max: 3200 }), fc.integer({ min: 50, max: 3200 }), (a, b) => {
      const pitch = readPitch(`${a / 100}/${b / 100}`);
      expect(readPitch(pitch.text)).toEqual(pitch);
    }), { seed: 1 });
  });
});
