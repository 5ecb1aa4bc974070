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
  it("is found beside a level stretch: minutes 10/√f down to 10/√2, a hair more logged (solved by hand)", () => {
    const level = 10 / Math.sqrt(2);
    for (const more of [2e-6, 4e-6, 1e-5, 1e-3]) {
      const logged = level * (1 + more);
      const factor = solveFactor((f) => Math.max(10 / Math.sqrt(f), level), logged) as number;
      expect(factor / (10 / logged) ** 2).toBeCloseTo(1, 5);
    }
  });
  it("is where the minutes jump past those logged: 12/f up to a factor of 2, 5/f from there, 4 logged (definition)", () => {
    expect(solveFactor((f) => (f < 2 ? 12 : 5) / f, 4)).toBeCloseTo(2, 7);
    expect(solveFactor((f) => (f < 0.3 ? 12 : 5) / f, 25)).toBeCloseTo(0.3, 7);
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
