import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { limitNames, type Cut } from "../../src/cutting/cut";
import { chipAtForce } from "../../src/cutting/chipAtForce";
import { cuttingForce } from "../../src/cutting/cuttingForce";
import { prepareCut } from "../../src/cutting/prepareCut";
import { runCut } from "../../src/cutting/runCut";
import type { Shop } from "../../src/shop/shop";
import { readPitch } from "../../src/blade/readPitch";
import { check, work } from "./fixture";

const plain = { rate: 1, force: 1, feedShare: 1 };
const cut = (size: string, saw: Partial<Shop> = {}, grade = "A36", pitch?: string): Cut =>
  prepareCut({ ...work(size, grade, "bi-metal", saw), pitch: pitch === undefined ? undefined : readPitch(pitch) });
const run = (...args: Parameters<typeof cut>) => runCut(cut(...args), plain);

describe("the usual rate", () => {
  it("rectangle: v·min(b·min(1, W/6p*), room)·g, to rounding (closed form)", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 8, max: 500 }),
        fc.constantFrom("A36", "304", "6061", "C36000"),
        fc.constantFrom("10/14", "4/6", "3/4", "1.4/2", undefined),
        (side, grade, pitch) => {
          const c = cut(`flat ${side}x200 mm on edge`, {}, grade, pitch);
          const width = c.profile.meanWidth;
          const bite = Math.min(c.bite * Math.min(1, width / (6 * c.plan.target)), c.room) * c.pitchFactor;
          expect(runCut(c, plain).rate / (c.speeds.speed * bite)).toBeCloseTo(1, 12);
        },
      ),
      { seed: 5, numRuns: 300 },
    );
  });
  it("round: minutes by their closed form, D(1 − q)·6p*/b + (D²/2)(asin q + q√(1 − q²))/b′ over v·g (geometry), to 1e-9", () => {
    for (const size of ["round 0.25", "round 1", "round 4", "round 7", "round 24"])
      for (const grade of ["A36", "6061", "C11000"]) {
        const c = cut(size, {}, grade);
        const d = c.profile.height;
        const b = Math.min(c.bite, c.room);
        const narrow = Math.min(d, (6 * c.plan.target * b) / c.bite);
        const q = Math.sqrt(1 - (narrow / d) ** 2);
        const way =
          (d * (1 - q) * 6 * c.plan.target) / c.bite + ((d ** 2 / 2) * (Math.asin(q) + q * Math.sqrt(1 - q ** 2))) / b;
        expect((runCut(c, plain).minutes * c.speeds.speed * c.pitchFactor) / way, `${size} ${grade}`).toBeCloseTo(1, 9);
      }
  });
  it("does not change when a saw is described that limits nothing", () => {
    const strong = { motorPower: 1e6, idlePower: 1, maximumFeed: 1e6, maximumFeedForce: 1e7 };
    for (const size of ["round 7", "tube 6x0.5", "W12x50", "round 2 bundle 3x4", "L4x4x1/2", "hex 2"])
      expect(run(size, strong).rate / run(size).rate, size).toBeCloseTo(1, 9);
  });
  it(`G3: a constant feed through a round has a peak rate of ${check("G3").expected.toFixed(5)} times the mean (geometry)`, () => {
    const c = cut("round 100 mm", { feedMode: "constant feed" });
    const { rate, minutes } = runCut(c, plain);
    expect(((100 / minutes) * 100) / rate / check("G3").expected).toBeCloseTo(1, 9);
  });
});

describe("what a saw may hold back", () => {
  it("sums to the area over the rate and to the whole of the time, whatever the section and the control", () => {
    const saw = { motorPower: 1500, bandWidth: 27, maximumFeed: 60 };
    for (const size of ["round 7", "flat 6x1", "tube 6x0.5", "W12x50", "round 2 bundle 3x4", "L4x4x1/2"])
      for (const feedMode of ["constant rate", "constant feed"] as const) {
        const c = cut(size, { ...saw, feedMode });
        const { rate, minutes, shares } = runCut(c, plain);
        expect((rate * minutes) / c.profile.area).toBeCloseTo(1, 12);
        expect(limitNames.reduce((sum, name) => sum + shares[name], 0)).toBeCloseTo(1, 12);
      }
  });
  it("maximum feed: height / feed where it binds all the way", () => {
    const { minutes, shares } = run("flat 6x1", { maximumFeed: 20 });
    expect(minutes).toBeCloseTo(25.4 / 20, 9);
    expect(shares["maximum feed"]).toBe(1);
  });
  it("the motor slows the band and keeps the chip: force × speed is the power at the band", () => {
    const saw = { motorPower: 1100, idlePower: 100 };
    const c = cut("flat 6x1", saw);
    const got = runCut(c, plain);
    expect(got.shares["motor power"]).toBe(1);
    expect(got.greatestPower / (0.75 * 1000)).toBeCloseTo(1, 9);
    const chip = (c.bite * c.pitchFactor * c.pitch.mean) / c.profile.meanWidth;
    const force = cuttingForce({ chip, teeth: c.profile.meanWidth / c.pitch.mean, law: c.saw.force });
    expect(got.speed).toBeCloseTo((60_000 * 750) / force, 6);
  });
  it("a motor too weak even for the slowest speed thins the chip", () => {
    const c = cut("flat 12x2", { motorPower: 160, idlePower: 100 });
    const got = runCut(c, plain);
    expect(got.speed).toBeCloseTo(10_000, 6);
    const chip = chipAtForce({
      force: (60_000 * 0.75 * 60) / 10_000,
      teeth: c.profile.meanWidth / c.pitch.mean,
      law: c.saw.force,
    });
    expect(got.rate).toBeCloseTo((chip * 10_000 * c.profile.meanWidth) / c.pitch.mean, 6);
  });
  it("feed force: 0.8 of the cutting force is what the saw can give", () => {
    const got = run("flat 6x1", { maximumFeedForce: 150 });
    expect(got.shares["feed force"]).toBe(1);
    expect(got.greatestForce * 0.8).toBeCloseTo(150, 6);
    expect(got.pushed).toBeCloseTo(1, 12);
  });
  it("fullest gullet is full where the gullet holds the cut", () => {
    const c = cut("round 1", {}, "6061");
    expect(runCut(c, plain).shares.gullet).toBeGreaterThan(0);
    expect(runCut(c, plain).gulletFill).toBeCloseTo((c.plan.target / c.pitch.mean) * c.pitchFactor, 9);
  });
});
