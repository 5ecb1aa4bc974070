import { describe, expect, it } from "vitest";
import { contactRows } from "../../src/section/contactRows";
import { cuttingMinutes } from "../../src/time/cuttingMinutes";
import { shape } from "../cost/fixture";

describe("minutes of cutting", () => {
  it("80 cm² at 40 cm²/min are 2 min: own check value, exact", () => {
    expect(cuttingMinutes({ section: shape("area 80 cm2"), rate: 4000, maximumFeed: undefined })).toBe(2);
  });

  it("a feed that is never reached changes nothing; one that always holds gives height / feed (derived)", () => {
    const section = shape("flat 100x80 mm");
    const height = section.profile().height;
    expect(cuttingMinutes({ section, rate: 4000, maximumFeed: 1e6 })).toBeCloseTo(2, 9);
    expect(cuttingMinutes({ section, rate: 1e9, maximumFeed: 10 })).toBeCloseTo(height / 10, 9);
  });

  it("G8: a 100 mm round at 50 cm²/min, feed capped at 80 mm/min: 1.65777 min (closed form), to 1e-9", () => {
    const [d, rate, feed] = [100, 5000, 80];
    const w = rate / feed;
    const segment = (d ** 2 / 4) * Math.asin(w / d) - (w / 4) * Math.sqrt(d ** 2 - w ** 2);
    const closed = ((Math.PI * d ** 2) / 4 - 2 * segment) / rate + (d - Math.sqrt(d ** 2 - w ** 2)) / feed;
    const minutes = cuttingMinutes({ section: shape("round 100 mm"), rate, maximumFeed: feed });
    expect(Math.abs(minutes / closed - 1)).toBeLessThan(1e-9);
    expect(Math.abs(minutes / 1.6577743252329902 - 1)).toBeLessThan(1e-9);
  });

  it("G9: the same without a cap: 1.5708 min, area / rate", () => {
    expect(cuttingMinutes({ section: shape("round 100 mm"), rate: 5000, maximumFeed: undefined })).toBeCloseTo(
      1.5707963267948966,
      12,
    );
  });

  it("the minutes of the rows of CONTACT sum to it: Σ width·step / rate", () => {
    for (const text of ["round 100 mm", "tube 120x15 mm", "hex 60 mm", "L 100x100x10"]) {
      const section = shape(text);
      const rows = contactRows({ section, steps: 1000 });
      const step = section.profile().height / 1000;
      const sum = rows
        .slice(1)
        .reduce((total, row, i) => total + ((rows[i]!.width + row.width) / 2) * (step / 4000), 0);
      expect(sum / cuttingMinutes({ section, rate: 4000, maximumFeed: undefined }), text).toBeCloseTo(1, 2);
    }
  });

  it("a feed limit never makes a cut faster", () => {
    const round = shape("round 100 mm");
    const free = cuttingMinutes({ section: round, rate: 4000, maximumFeed: undefined });
    for (const maximumFeed of [5, 20, 40, 80, 400])
      expect(cuttingMinutes({ section: round, rate: 4000, maximumFeed })).toBeGreaterThanOrEqual(free * (1 - 1e-9));
  });
});
