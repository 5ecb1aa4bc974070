import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Cut } from "../../src/cutting/cut";
import { runCut } from "../../src/cutting/runCut";
import { prepareCut } from "../../src/cutting/prepareCut";
import { readPitch } from "../../src/blade/readPitch";
import { scenarios } from "../../src/cutting/scenarios";
import { check, inch2, shape, work } from "./fixture";

/** A cut without any limit but the one asked for: chip load q = chip × teeth at one depth. */
const bare = (size: string, tpi: number, speed: number, load: number, constantFeed = false): Cut => {
  const real = prepareCut(work(size, "A36"), scenarios.nominal).forPitch(readPitch(tpi));
  return {
    ...real,
    speed,
    chips: { load, fullLoad: load, floor: 0, greatest: Infinity, nominal: 1, credit: 1 },
    chipVolume: 1e-9,
    limits: { maximumFeed: undefined, cuttingForce: undefined, power: undefined, constantFeed },
  };
};

describe("kinematics, where nothing limits the cut", () => {
  it(`K4, K5: ${check("K4").input} give ${check("K4").expected.toFixed(3)} cm²/min, ${check("K5").expected.toFixed(3)} in²/min (${check("K4").source})`, () => {
    const teeth = 100 / (25.4 / 3.5);
    const { rate } = runCut(bare("square 100 mm", 3.5, 75_000, 0.01 * teeth));
    expect(rate / 100).toBeCloseTo(check("K4").expected, 9);
    expect(rate / inch2).toBeCloseTo(check("K5").expected, 9);
  });

  it(`K1, K2, K3: tooth passing, feed and chip (${check("K2").source})`, () => {
    expect(60_000 / readPitch(3.5).mean / 60).toBeCloseTo(check("K1").expected, 9);
    const p = readPitch(3.5).mean;
    const { minutes } = runCut(bare("square 100 mm", 3.5, 60_000, 0.008 * (100 / p)));
    expect(100 / minutes).toBeCloseTo(check("K2").expected, 9);
    const chip = (1.5 * 25.4 * readPitch(4).mean) / (250 * 304.8);
    expect(chip * 1000).toBeCloseTo(check("K3").expected, 12);
  });

  it(`G3: a constant feed through a round has a peak rate of ${check("G3").expected.toFixed(5)} times the mean (geometry)`, () => {
    const cut = bare("round 100 mm", 3.5, 60_000, 0.05, true);
    const { rate, meanChip } = runCut(cut);
    const feed = (meanChip * cut.speed) / cut.pitch.mean;
    expect((feed * 100) / rate).toBeCloseTo(check("G3").expected, 9);
  });

  it("T5, T6: chip thickness of the 7 in round in 18 min, and at 10 in²/min (common practice; derived)", () => {
    const feed = 177.8 / 18;
    expect(((feed * readPitch(2.5).mean) / 30_480) * 1000).toBeCloseTo(check("T5").expected, 9);
    const area = (Math.PI * 177.8 ** 2) / 4;
    const mean = (10 * inch2 * 177.8) / area;
    expect(((mean * readPitch(2).mean) / 70_000) * 1000).toBeCloseTo(check("T6").expected, 9);
  });

  it("T7, T8: the duplex and PH group row by hand, without width factors (calibrated on common practice, not independent)", () => {
    const peak = (v: number, chip: number, tpi: number): number =>
      (v * chip * (177.8 / readPitch(tpi).mean) * (Math.PI / 4)) / inch2;
    expect(peak(30_000, 0.0035, 2.5)).toBeCloseTo(check("T7").expected, 6);
    expect(peak(68_000, 0.0075, 2)).toBeCloseTo(check("T8").expected, 6);
  });
});

describe("the gullet", () => {
  it("P1, P2: greatest contact at 10 µm, α 0.25, φ 0.7, R 5 (gullet model)", () => {
    for (const [id, tpi] of [
      ["P1", 3.5],
      ["P2", 12],
    ] as const) {
      const p = readPitch(tpi).mean;
      const longest = (0.25 * 0.7 * p ** 2) / (5 * 0.01);
      expect(longest).toBeCloseTo(check(id).expected, 9);
      const at = (width: number) =>
        runCut({ ...bare(`square ${width} mm`, tpi, 60_000, (0.01 * width) / p), chipVolume: 5 }).shares;
      expect(at(longest * 0.999)[2]).toBe(0);
      expect(at(longest * 1.001)[2]).toBe(1);
    }
  });

  it("P4: grows as the square of the pitch, as the broach rule p = 1.76·√l does (Kalpakjian, from memory)", () => {
    expect(1.76 * Math.sqrt(100)).toBeCloseTo(check("P4").expected, 12);
  });
});

describe("the integration over the way down", () => {
  it("sums to the area over the rate, whatever the section and the control", () => {
    for (const size of ["round 7", "flat 6x1", "tube 6x0.5", "W12x50", "round 2 bundle 3x4", "L4x4x1/2"]) {
      for (const constantFeed of [false, true]) {
        const cut = bare(size, 3.5, 60_000, 0.05, constantFeed);
        const { rate, minutes, shares } = runCut(cut);
        expect(Math.abs((rate * minutes) / cut.profile.area - 1)).toBeLessThan(1e-12);
        expect(shares.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
      }
    }
  });

  it("at a constant rate the section does not matter: rate = speed × chip load (closed form), to 1e-9", () => {
    for (const size of ["round 7", "flat 6x1", "tube 6x0.5", "W12x50", "L4x4x1/2"])
      expect(Math.abs(runCut(bare(size, 3.5, 60_000, 0.05)).rate / (60_000 * 0.05) - 1), size).toBeLessThan(1e-9);
  });

  it("a bundle of one is the piece", () => {
    const one = runCut(bare("round 2", 6, 60_000, 0.05));
    expect(
      runCut({ ...bare("round 2", 6, 60_000, 0.05), profile: shape("round 2 bundle 1x1").profile() }).rate,
    ).toBeCloseTo(one.rate, 9);
  });

  it("holds each limit: the named one is met where it binds", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 400, noNaN: true }),
        fc.double({ min: 5, max: 200, noNaN: true }),
        (width, feed) => {
          const cut = {
            ...bare(`square ${width} mm`, 3.5, 60_000, 0.3),
            limits: { maximumFeed: feed, cuttingForce: undefined, power: undefined, constantFeed: false },
          };
          const { minutes, shares } = runCut(cut);
          const free = (60_000 * 0.3) / width;
          expect(width / minutes).toBeCloseTo(Math.min(feed, free), 6);
          expect(shares[3]).toBe(feed < free ? 1 : 0);
        },
      ),
      { seed: 5 },
    );
  });
});
