import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { bladeLife } from "../../src/records/bladeLife";
import type { Ending } from "../../src/records/bladeRecord";
import { soundRefusal } from "../soundRefusal";
import { weibulls } from "./weibulls";

const of = (areaCut: readonly number[], why?: readonly Ending[]) => bladeLife({ areaCut, why });

describe("BLADELIFE", () => {
  it("mean ± t·s/√n of 3.1 3.6 4.4 2.7 3.3: 3.42, 0.6380 (R), t 1.5332 (table of Student's t, 80 %)", () => {
    const { mean, low, high, blades, spread } = of([3.1, 3.6, 4.4, 2.7, 3.3]);
    const half = (1.5332 * 0.6379655163) / Math.sqrt(5);
    expect(mean).toBeCloseTo(3.42, 9);
    expect(low).toBeCloseTo(3.42 - half, 4);
    expect(high).toBeCloseTo(3.42 + half, 4);
    expect([blades, (spread as number).toFixed(4)]).toEqual([5, "0.1865"]);
  });
  it("blades more for ±10 %: spread 0.1865 needs 8 in all (t 1.4149 of 7: 0.0933; t 1.4398 of 6: 0.1015)", () => {
    expect(of([3.1, 3.6, 4.4, 2.7, 3.3]).bladesMore).toBe(3);
  });
  it("the shape from five worn blades up; breakages do not pull it down, but count in the mean", () => {
    const areas = [3.1, 3.6, 4.4, 2.7, 3.3];
    expect(of(areas.slice(1)).shape).toMatchObject({ facts: { worn: "4" } });
    const whole = of(areas).shape as number;
    expect(whole).toBeGreaterThan(4);
    const broke = of([...areas, 0.4], ["worn", "worn", "worn", "worn", "worn", "broke"]);
    expect(Math.abs((broke.shape as number) / whole - 1)).toBeLessThan(0.02);
    expect(broke.mean).toBeCloseTo((3.42 * 5 + 0.4) / 6, 9);
    expect(broke.blades).toBe(6);
  });
  it("with no end gives only at least: Σ area / ln 10 (exponential life, 9 in 10)", () => {
    const { mean, low, high, blades } = of([3000, 2000], ["still in use", "pulled"]);
    expect(low).toBeCloseTo(5000 / Math.log(10), 9);
    expect(mean).toBeInstanceOf(InputError);
    expect(high).toBeInstanceOf(InputError);
    expect(blades).toBe(0);
  });
  it("blades that all cut the same area: known already, and without a shape", () => {
    const { bladesMore, shape } = of([3, 3, 3, 3, 3]);
    expect(bladesMore).toBe(0);
    expect(soundRefusal(shape as InputError).problem).toBe("all worn blades cut the same area");
  });
  it("19 lives of 1 and one of a million, spread 4.47: ±10 % takes (1.28 · 4.47 / 0.1)², thousands of blades, more than are counted", () => {
    const { problem, facts } = soundRefusal(of([...Array<number>(19).fill(1), 1e6]).bladesMore as InputError);
    expect(problem).toBe("more than {most} blades");
    expect(Number(facts["most"])).toBeGreaterThan(10);
  });
  it("only worn blades count for the shape", () => {
    const { shape } = of([3.1, 3.6, 4.4, 2.7, 3.3], ["worn", "worn", "broke", "worn", "worn"]);
    expect(soundRefusal(shape as InputError).facts).toMatchObject({ worn: "4" });
  });
  it("from one blade gives no band; from two that differ much no lower end", () => {
    expect(of([700])).toMatchObject({ mean: 700, low: { problem: "one blade: how far lives differ is not known" } });
    expect(of([1000, 3000]).low).toMatchObject({ problem: "too few blades for a lower end" });
  });
  it.each([
    [3, 0, 0.72],
    [5, 0, 0.73],
    [10, 0, 0.74],
    [5, 0.25, 0.68],
    [10, 0.25, 0.72],
  ])("covers the mean in 8 of 10 logs, simulated: %i blades, share censored %f", (n, censored, least) => {
    const next = weibulls(7, 4);
    let [inside, all] = [0, 0];
    for (let i = 0; i < 1500; i += 1) {
      const lives = Array.from({ length: n }, () => {
        const life = next();
        // A blade may be pulled at any part of its life.
        const pulled = next() / 1.2 < life && (life * 1e6) % 1 < censored;
        return pulled ? ([life * (0.3 + 0.6 * ((life * 1e3) % 1)), "pulled"] as const) : ([life, "worn"] as const);
      });
      const { low, high } = of(
        lives.map((l) => l[0]),
        lives.map((l) => l[1]),
      );
      if (low instanceof InputError || high instanceof InputError) continue;
      all += 1;
      inside += low <= 1 && high >= 1 ? 1 : 0;
    }
    expect(inside / all).toBeGreaterThan(least);
    expect(inside / all).toBeLessThan(0.9);
  });
});
