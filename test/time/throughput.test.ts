import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { throughput } from "../../src/time/throughput";
import { law, spread } from "../cost/fixture";

const of = (minutes: number, hours: number, availability = 1, piecesPerCut = 1) =>
  throughput({ minutes, hours, availability, piecesPerCut });

describe("pieces in a time (definition)", () => {
  it.each<[string, Parameters<typeof of>, number]>([
    ["8 h at 20 min", [20, 8], 24],
    ["8 h at 21 min: a cut begun does not count", [21, 8], 22],
    ["90 % of 3 h at 2.7 min, where a naive floor gives 59", [2.7, 3, 0.9], 60],
    ["7 h at 0.7 min", [0.7, 7], 600],
    ["8 h at 85 % of 3.5 min, 12 a cut: 116 cuts", [3.5, 8, 0.85, 12], 116 * 12],
    ["a cut longer than the time", [600, 8], 0],
  ])("%s", (_, input, expected) => {
    expect(of(...input)).toBe(expected);
  });

  it("the cuts fit into the time, and one more does not", () => {
    const accepted = law(
      fc.record({ minutes: spread(0.05, 500), hours: spread(0.1, 5000), availability: spread(0.1, 1) }),
      121,
      ({ minutes, hours, availability }) => {
        const cuts = of(minutes, hours, availability);
        const time = 60 * hours * availability;
        return cuts * minutes <= time * (1 + 2e-9) && (cuts + 1) * minutes > time;
      },
    );
    expect(accepted).toBe(1);
  });
});
