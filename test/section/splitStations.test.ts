import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { splitStations } from "../../src/section/splitStations";
import { shape } from "./fixture";

/** Area where the contact is at least a width, and height where it is less. */
const split = (text: string, width: number, sums = false) => {
  const profile = shape(text).profile();
  const stations = splitStations({ profile, width, sums });
  const sum = (of: (s: (typeof stations)[number]) => number) => stations.reduce((total, s) => total + of(s), 0);
  return {
    profile,
    wideArea: sum((s) => (s.contact >= width ? s.contact * s.travel : 0)),
    narrowHeight: sum((s) => (s.contact < width ? s.travel : 0)),
    area: sum((s) => s.contact * s.travel),
    height: sum((s) => s.travel),
  };
};

describe("a cut split where its contact passes a width", () => {
  it("round d: contact 2√(y(d − y)) ≥ w over √(d² − w²) of the height; area of the middle by the segment formula (geometry)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 500, noNaN: true }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (d, share) => {
          const real = Number(d.toFixed(6));
          const w = share * real;
          const { wideArea, narrowHeight } = split(`round ${real} mm`, w);
          expect(narrowHeight / (real - Math.sqrt(real ** 2 - w ** 2))).toBeCloseTo(1, 8);
          const segment = (real ** 2 / 4) * Math.asin(w / real) - (w / 4) * Math.sqrt(real ** 2 - w ** 2);
          expect(wideArea / ((Math.PI * real ** 2) / 4 - 2 * segment)).toBeCloseTo(1, 9);
        },
      ),
      { seed: 8, numRuns: 200 },
    );
  });

  it("a contact far shorter than the round, near its poles: height w²/(d + √(d² − w²)) within round-off (geometry)", () => {
    // 0.15 mm: 1 m/min of feed at 1.5 cm² a minute.
    for (const [d, w] of [
      [661.102, 0.149],
      [661.102, 0.14899544594455916],
      [260.473, 6.4e-8],
      [55.842, 0.0001956689830136118],
      [100, 1],
      [20, 0.002],
    ] as const)
      expect(Math.abs(split(`round ${d} mm`, w).narrowHeight - w ** 2 / (d + Math.sqrt(d ** 2 - w ** 2)))).toBeLessThan(
        1e-12,
      );
  });

  it("flat: all or nothing", () => {
    expect(split("flat 60x20 mm", 59)).toMatchObject({ wideArea: expect.closeTo(1200, 9) as number, narrowHeight: 0 });
    expect(split("flat 60x20 mm", 61)).toMatchObject({ wideArea: 0, narrowHeight: expect.closeTo(20, 9) as number });
  });

  it("area and height of the parts are those of the whole, for shapes that pass the width several times", () => {
    for (const text of [
      "tube 6x0.5",
      "W12x50",
      "box 4x4x1/4",
      "round 2 bundle 3x4",
      "round 20 mm bundle 3x4 nested",
      "hex 50 mm",
      "L4x4x1/2",
    ])
      for (const width of [0, 5, 12, 25, 60, 1e6]) {
        const { profile, area, height } = split(text, width);
        expect(area / profile.area, text).toBeCloseTo(1, 12);
        expect(height / profile.height, text).toBeCloseTo(1, 12);
        const [fine, few] = [split(text, width), split(text, width, true)];
        expect(few.wideArea / profile.area).toBeCloseTo(fine.wideArea / profile.area, 9);
        expect(few.narrowHeight / profile.height).toBeCloseTo(fine.narrowHeight / profile.height, 9);
      }
  });

  it("a tube's narrow height by its own closed form: wall above and below the bore (geometry)", () => {
    // Tube 100 × 10: above the bore the contact is 2√(y(100 − y)), 40 at y = 50 − √(50² − 20²).
    const { narrowHeight, profile } = split("tube 100x10 mm", 40);
    const top = 50 - Math.sqrt(50 ** 2 - 20 ** 2);
    const inside = (y: number) => 2 * (Math.sqrt(50 ** 2 - y ** 2) - Math.sqrt(40 ** 2 - y ** 2));
    let [low, high] = [0, 40];
    for (let i = 0; i < 60; i += 1)
      [low, high] = inside((low + high) / 2) < 40 ? [(low + high) / 2, high] : [low, (low + high) / 2];
    expect(narrowHeight).toBeCloseTo(2 * top + 2 * low, 6);
    expect(profile.height).toBeCloseTo(100, 9);
  });
});
