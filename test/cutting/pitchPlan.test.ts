import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readPitch } from "../../src/blade/readPitch";
import { pitchPlan } from "../../src/cutting/pitchPlan";
import { findMaterial } from "../../src/material/findMaterial";
import { shape } from "./fixture";

const plan = (size: string, grade = "1018", blade: "bi-metal" | "carbide" = "bi-metal") =>
  pitchPlan({ profile: shape(size).profile(), group: findMaterial(grade, []).group!, blade });

describe("the pitch that a work asks for", () => {
  it.each([
    [0.25, "10/14"],
    [0.75, "6/10"],
    [1.25, "4/6"],
    [4, "3/4"],
    [8, "2/3"],
  ] as const)("square %s in: %s (Machinery's Handbook, 31st ed., p. 1245, read)", (side, pitch) => {
    expect(plan(`square ${side}`).target).toBeCloseTo(readPitch(pitch).mean, 9);
    expect(plan(`square ${side}`).best?.text).toBe(pitch);
  });
  it("between two points straight in the logarithm: 2 × √2 in lies half way from 2.5... to 4 by its logarithm (by hand)", () => {
    const half = 2.5 * Math.sqrt(4 / 2.5);
    expect(plan(`square ${half}`).target).toBeCloseTo((readPitch("4/6").mean + readPitch("3/4").mean) / 2, 6);
    expect(plan("square 30").target).toBe(readPitch("0.75/1.25").mean);
  });
  it("aluminium and magnesium × 1.4, one step coarser (common practice); no other metal", () => {
    expect(plan("square 4", "6061").target / plan("square 4").target).toBeCloseTo(1.4, 12);
    expect(plan("square 4", "AZ31B").target).toBe(plan("square 4", "6061").target);
    for (const grade of ["304", "D2", "C36000", "C11000", "Ti-6Al-4V", "N07718"])
      expect(plan("square 4", grade).target).toBe(plan("square 4").target);
  });
  it("half the thinnest lasting part at most, never finer than made", () => {
    expect(plan("box 4x4x1/4").target).toBeCloseTo(6.35 / 2, 2);
    expect(plan("box 4x4x1/16").target).toBe(readPitch("14/18").mean);
    expect(plan("box 4x4x1/4", "1018", "carbide").target).toBe(readPitch("4/6").mean);
  });
  it("two teeth with 2 % of slack are lawful; thinner walls take the finest bi-metal pitch down to 0.75 of a tooth", () => {
    const finest = readPitch("14/18").mean;
    const wall = (teeth: number) => `box 60x60x${(teeth * finest).toFixed(6)} mm`;
    expect(plan(wall(1.97)).lawful(readPitch("14/18"))).toBe(true);
    expect(plan(wall(1.95)).lawful(readPitch("14/18"))).toBe(false);
    expect(plan(wall(0.8)).best?.text).toBe("14/18");
    expect(plan(wall(0.7)).best).toBeUndefined();
    expect(plan(wall(0.8), "1018", "carbide").best).toBeUndefined();
    expect(plan("round 2 mm").best).toBeUndefined();
  });
  it("of two pitches as near the finer is taken", () => {
    const { nearest, target } = plan("square 4");
    const twin = (factor: number) => ({ ...readPitch("3/4"), text: `${factor}`, mean: target * factor });
    expect(nearest([twin(0.8), twin(1.25)])?.text).toBe("0.8");
  });
  it("factor: 1 at the best, the ratio of the pitches one step away, both ways (derived)", () => {
    const { factor, target } = plan("square 4");
    expect(factor(readPitch("3/4"))).toBe(1);
    for (const text of ["4/6", "2/3", "10/14", "1.1/1.6"]) {
      const { mean } = readPitch(text);
      expect(factor(readPitch(text))).toBeCloseTo(Math.min(mean / target, target / mean), 12);
    }
  });
  it("is never above 1, and 1 at the best pitch made (any square)", () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 900, noNaN: true }), (side) => {
        const { best, factor, made } = plan(`square ${side.toFixed(3)} mm`);
        if (best === undefined) return;
        expect(factor(best)).toBe(1);
        for (const p of made) expect(factor(p)).toBeLessThanOrEqual(1);
      }),
      { seed: 4, numRuns: 200 },
    );
  });
});
