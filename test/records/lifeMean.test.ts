import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { lifeMean, type LifeMean } from "../../src/records/lifeMean";
import { lives } from "../statistics/lives";

const known = (ended: string, running = ""): LifeMean => {
  const mean = lifeMean(lives(ended, running));
  if (mean instanceof InputError) throw mean;
  return mean;
};

describe("mean life", () => {
  it("is the arithmetic mean, so that price / mean is what blades cost: 180/3.42 = 52.63, not the mean of 180/life, 54.04 (renewal theorem)", () => {
    const own = [3.1, 3.6, 4.4, 2.7, 3.3];
    const { mean, error, spread, censored } = known("3.1 3.6 4.4 2.7 3.3");
    expect(180 / mean).toBeCloseTo(52.63157895, 7);
    expect(own.reduce((s, l) => s + 180 / l, 0) / own.length).toBeCloseTo(54.03714565, 7);
    expect(error!.relative * mean).toBeCloseTo(0.6379655163 / Math.sqrt(5), 9);
    expect([error!.df, censored]).toEqual([4, false]);
    expect(spread).toBeCloseTo(0.6379655163 / 3.42, 9);
  });
  it("is the Weibull mean where some run on: NIST's ten and ten censored, 540.7370255 (R survival)", () => {
    const { mean, error, spread } = known(
      "54 187 216 240 244 335 361 373 375 386",
      "500 500 500 500 500 500 500 500 500 500",
    );
    expect(mean).toBeCloseTo(540.7370255, 4);
    expect(error!.df).toBe(9);
    // Shape 3, 4 and 6 have 0.363, 0.281 and 0.194 (table of the Weibull distribution); 1.72 lies above.
    expect(spread).toBeGreaterThan(0.5);
    expect(spread).toBeLessThan(0.7);
  });
  it("of one blade is its life, and how sure is not known", () => {
    expect(known("700")).toEqual({ mean: 700, error: undefined, spread: undefined, censored: false });
  });
  it.each([
    ["", "3 4", "no blade has come to its end yet"],
    ["3", "4", "one blade has come to its end and others run on"],
    ["4 4", "2", "all blades that came to their end cut the same area"],
  ])("is refused with what is known: %s, running %s", (ended, running, says) => {
    const mean = lifeMean(lives(ended, running));
    expect(mean).toBeInstanceOf(InputError);
    expect((mean as InputError).problem).toContain(says);
  });
});
