import { describe, expect, it } from "vitest";
import { cuttingMinutes } from "../../src/time/cuttingMinutes";
import { shape } from "../cost/fixture";

describe("minutes of cutting", () => {
  it("80 cm² at 40 cm²/min are 2 min: own check value, exact", () => {
    expect(cuttingMinutes({ section: shape("area 80 cm2"), rate: 4000, greatestFeed: undefined })).toBe(2);
  });

  it("a feed that is never reached changes nothing; one that always holds gives height / feed (derived)", () => {
    const section = shape("flat 100x80 mm");
    const height = section.profile().height;
    expect(cuttingMinutes({ section, rate: 4000, greatestFeed: 1e6 })).toBeCloseTo(2, 9);
    expect(cuttingMinutes({ section, rate: 1e9, greatestFeed: 10 })).toBeCloseTo(height / 10, 9);
  });

  it("a feed limit never makes a cut faster", () => {
    const round = shape("round 100 mm");
    const free = cuttingMinutes({ section: round, rate: 4000, greatestFeed: undefined });
    for (const greatestFeed of [5, 20, 40, 80, 400]) expect(cuttingMinutes({ section: round, rate: 4000, greatestFeed })).toBeGreaterThanOrEqual(free * (1 - 1e-9));
  });
});
