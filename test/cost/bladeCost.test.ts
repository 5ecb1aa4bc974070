import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bladeCost } from "../../src/cost/bladeCost";
import { bladeA, bladeB, blades, law, relative, spread } from "./fixture";

describe("cost per area", () => {
  it("own check values (no publication): 120, 30000 cm², 40 cm²/min and 260, 50000, 55; change 10 min, 60 an hour: 293.33 and 235.82 per m²", () => {
    expect(10000 * bladeCost({ blade: bladeA, sawHourValue: 60, change: 10 })).toBeCloseTo(293.3333333, 6);
    expect(10000 * bladeCost({ blade: bladeB, sawHourValue: 60, change: 10 })).toBeCloseTo(235.8181818, 6);
  });

  it("falls as the life rises", () => {
    const accepted = law(
      fc.record({ blade: blades, longer: spread(1.01, 100), w: spread(0.1, 500), change: spread(0.1, 60) }),
      11,
      ({ blade, longer, w, change }) =>
        bladeCost({ blade: { ...blade, life: blade.life * longer }, sawHourValue: w, change }) <
        bladeCost({ blade, sawHourValue: w, change }),
    );
    expect(accepted).toBe(1);
  });

  it("in another currency is the same number of it", () => {
    law(
      fc.record({ blade: blades, k: spread(1e-3, 1e3), w: spread(0.1, 500) }),
      12,
      ({ blade, k, w }) =>
        relative(
          k * bladeCost({ blade, sawHourValue: w, change: 10 }),
          bladeCost({ blade: { ...blade, price: k * blade.price }, sawHourValue: k * w, change: 10 }),
        ) < 1e-12,
    );
  });
});
