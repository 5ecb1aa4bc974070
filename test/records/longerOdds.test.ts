import { describe, expect, it } from "vitest";
import { longerOdds } from "../../src/records/longerOdds";
import { lives } from "../statistics/lives";
import { weibulls } from "./weibulls";

const a = lives("3.1 3.6 4.4 2.7 3.3");
const b = lives("4.6 5.9 5.1 4.4");

describe("how likely lives are longer than a ratio times others", () => {
  it("R t.test on logs: one side of p 0.007593346287 for a ratio of 1", () => {
    expect(longerOdds(a, b, 1).likely).toBeCloseTo(1 - 0.007593346287 / 2, 8);
    // The other way round: the second set against itself at its own ratio of means of logs.
    expect(longerOdds(a, b, 1.472174392).likely).toBeCloseTo(0.5, 6);
  });
  it("with blades running is the share of splits, counted here by hand: 3 against 3 with the last running, 19.5 of 20", () => {
    expect(longerOdds(lives("1 2 3"), lives("4 5", "6"), 1).likely).toBe(19.5 / 20);
    expect(longerOdds(lives("4 5 6"), lives("1 2", "3"), 1).likely).toBeLessThan(0.5);
  });
  it("says how many more blades settle it: none where it is settled, not known while blades run, none where the offer is behind", () => {
    expect(longerOdds(a, b, 1).bladesMore).toBe(0);
    const more = longerOdds(lives("3 4 5"), lives("3.6 4.8 6"), 1).bladesMore as number;
    expect(more).toBeGreaterThan(0);
    expect(more).toBeLessThan(10);
    expect(longerOdds(b, a, 1).bladesMore).toMatchObject({ reason: "none" });
    expect(longerOdds(a, lives("5", "6 7"), 1).bladesMore).toMatchObject({ problem: "blades still running" });
  });
  it.each([
    [4, 0],
    [4, 0.3],
    [8, 0],
  ])(
    "claims 90 in 100 for equal lives in a tenth of trials or fewer, simulated: %i blades each, censored %f",
    (n, share) => {
      const next = weibulls(3, 4);
      let claims = 0;
      const trials = 800;
      for (let i = 0; i < trials; i += 1) {
        const set = () =>
          Array.from({ length: n }, () => {
            const life = next();
            return (life * 1e5) % 1 < share ? { area: life * 0.6, ended: false } : { area: life, ended: true };
          });
        claims += longerOdds(set(), set(), 1).likely > 0.9 ? 1 : 0;
      }
      expect(claims / trials).toBeLessThan(0.13);
      expect(claims / trials).toBeGreaterThan(0.04);
    },
  );
});
