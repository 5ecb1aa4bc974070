import { describe, expect, it } from "vitest";
import { solveFactor } from "../../src/records/solveFactor";

describe("the factor at which a cut takes the minutes logged", () => {
  it("is in proportion where nothing binds (definition)", () => {
    expect(solveFactor((f) => 12 / f, 15)).toBeCloseTo(0.8, 9);
  });
  it("is found where a limit bends the law: minutes 10/f up to a factor of 1, 10/√f from there (solved by hand)", () => {
    const minutes = (f: number): number => (f < 1 ? 10 / f : 10 / Math.sqrt(f));
    expect(solveFactor(minutes, 5)).toBeCloseTo(4, 5);
    expect(solveFactor(minutes, 20)).toBeCloseTo(0.5, 5);
  });
  it("is not taken where the minutes cannot be reached, or where units slipped", () => {
    expect(solveFactor((f) => Math.max(6, 12 / f), 5)).toMatchObject({ template: "faster than this saw as described" });
    for (const [minutes, factor] of [
      [12 * 60, "0.017"],
      [12 / 60, "60"],
      [12 * 645.16, "0.0016"],
    ] as const)
      expect(solveFactor((f) => 12 / f, minutes)).toMatchObject({
        template: expect.stringContaining("minutes typed as seconds or hours") as string,
        facts: { factor },
      });
    expect(solveFactor((f) => 12 / f, 12 * 7.9)).toBeCloseTo(1 / 7.9, 9);
  });
});
