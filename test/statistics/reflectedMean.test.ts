import { describe, expect, it } from "vitest";
import { reflectedMean } from "../../src/statistics/reflectedMean";
import { random } from "../plan/fixture";

describe("Brownian motion held back at 0", () => {
  it("without drift √(2vt/π) (closed form)", () => {
    expect(reflectedMean({ drift: 0, variance: 2, time: 100 })).toBeCloseTo(11.283791670955127, 9);
  });

  it("in the long run v/(2|a|) where it falls (closed form), a·t where it rises", () => {
    expect(reflectedMean({ drift: -0.1, variance: 2, time: 1e6 })).toBeCloseTo(10, 6);
    expect(reflectedMean({ drift: 3, variance: 2, time: 1e6 }) / 3e6).toBeCloseTo(1, 6);
  });

  it("is 0 at the start, and smooth through no drift", () => {
    expect(reflectedMean({ drift: 1, variance: 2, time: 0 })).toBe(0);
    const at = (drift: number) => reflectedMean({ drift, variance: 2, time: 100 });
    for (const drift of [1e-7, 2e-6, 1e-5]) expect((at(drift) + at(-drift)) / 2).toBeCloseTo(at(0), 6);
    // Where the series ends, d = 0.1.
    const edge = 0.1 * Math.sqrt(2 / 100);
    for (const sign of [-1, 1]) expect(at(sign * edge * 0.9999) / at(sign * edge * 1.0001)).toBeCloseTo(1, 4);
  });

  it.each([-0.3, 0.2])("drift %s: a random walk of many small steps (simulated, 3 standard errors)", (drift) => {
    const next = random(11);
    const [runs, steps, time] = [4000, 1500, 8];
    const [move, push] = [Math.sqrt((2 * time) / steps), (drift * time) / steps];
    const ends = Array.from({ length: runs }, () => {
      // Held back: what the free walk is above its lowest point so far, 0 included.
      let [free, lowest] = [0, 0];
      for (let i = 0; i < steps; i += 1) {
        free += push + (next() < 0.5 ? -move : move);
        lowest = Math.min(lowest, free);
      }
      return free - lowest;
    });
    const mean = ends.reduce((s, x) => s + x, 0) / runs;
    const error = Math.sqrt(ends.reduce((s, x) => s + (x - mean) ** 2, 0) / runs / runs);
    // A walk in steps is low by about 0.58 of a step.
    expect(Math.abs(mean + 0.58 * move - reflectedMean({ drift, variance: 2, time }))).toBeLessThan(3 * error);
  });
});
