import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { contactSplit } from "../../src/section/contactSplit";
import { readSection } from "../../src/section/readSection";

describe("a cut split where its contact passes a width", () => {
  it("round d: contact 2√(y(d − y)) ≥ w over √(d² − w²) of the height; area of the middle by the segment formula (geometry)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 500, noNaN: true }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (d, share) => {
          const w = share * d;
          const { wideArea, narrowHeight } = contactSplit({
            section: readSection(`round ${d.toFixed(6)} mm`, "inch"),
            width: w,
          });
          const real = Number(d.toFixed(6));
          expect(narrowHeight).toBeCloseTo(real - Math.sqrt(real ** 2 - w ** 2), 6);
          const segment = (real ** 2 / 4) * Math.asin(w / real) - (w / 4) * Math.sqrt(real ** 2 - w ** 2);
          expect(wideArea / ((Math.PI * real ** 2) / 4 - 2 * segment)).toBeCloseTo(1, 9);
        },
      ),
      { seed: 8, numRuns: 200 },
    );
  });

  it("flat: all or nothing", () => {
    const section = readSection("flat 60x20 mm", "inch");
    expect(contactSplit({ section, width: 59 })).toEqual({ wideArea: expect.closeTo(1200, 9), narrowHeight: 0 });
    expect(contactSplit({ section, width: 61 })).toEqual({ wideArea: 0, narrowHeight: expect.closeTo(20, 9) });
  });

  it("area and height of the two parts are those of the whole, for a shape that passes the width several times", () => {
    for (const text of [
      "tube 6x0.5",
      "W12x50",
      "box 4x4x1/4",
      "round 2 bundle 3x4",
      "round 20 mm bundle 3x4 nested",
      "hex 50 mm",
    ]) {
      const section = readSection(text, "inch");
      const all = contactSplit({ section, width: 0 });
      expect(all.wideArea / section.area, text).toBeCloseTo(1, 12);
      expect(all.narrowHeight).toBe(0);
      const some = contactSplit({ section, width: 25 });
      expect(some.wideArea).toBeLessThanOrEqual(section.area * (1 + 1e-12));
    }
  });
});
