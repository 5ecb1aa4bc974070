import { describe, expect, it } from "vitest";
import { readPitch } from "../../src/blade/readPitch";
import { teethInCut } from "../../src/cutting/teethInCut";
import { check, shape } from "./fixture";

const teeth = (size: string, pitch: string | number) =>
  teethInCut({ profile: shape(size).profile(), pitch: readPitch(pitch) });

describe("teeth in the cut", () => {
  it(`${check("K6").input}: ${check("K6").expected} (${check("K6").source})`, () => {
    const expected = check("K6").expected;
    expect(teeth("square 100 mm", 3.5).mean).toBeCloseTo(expected, 9);
    expect(teeth("square 100 mm", 3.5).most).toBeCloseTo(expected, 9);
  });

  it("tube 120 × 90 mm with 6/10: 13.0 on the mean width, 25 at the bore's tangent, 4.7 in one wall (by hand: contact / pitch)", () => {
    const { mean, most, fewest } = teeth("tube 120x15 mm", "6/10");
    expect(mean).toBeCloseTo(41.2334 / 3.175, 3);
    expect(most).toBeCloseTo(79.3725 / 3.175, 3);
    expect(fewest).toBeGreaterThanOrEqual(15 / 3.175);
    expect(fewest).toBeLessThan(1.05 * (15 / 3.175)); // a fifth of the way meets the wall a little slantwise
  });

  it("refuses an area without a shape", () => {
    expect(() => teeth("area 20", 2)).toThrow(/shape/);
  });
});
