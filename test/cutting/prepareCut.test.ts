import { describe, expect, it } from "vitest";
import { prepareCut } from "../../src/cutting/prepareCut";
import { readPitch } from "../../src/blade/readPitch";
import { scenarios } from "../../src/cutting/scenarios";
import { work } from "./fixture";

const prepare = (...args: Parameters<typeof work>) => prepareCut(work(...args), scenarios.nominal);

describe("a cut before its pitch is known", () => {
  it("runs at the group's speed × factors: 17-4PH 7 in round, 30 m/min × (100/139.64)^0.15", () => {
    expect(prepare("round 7", "17-4PH").speed).toBeCloseTo(30_000 * (100 / 139.644) ** 0.15, 0);
  });

  it("is capped by the saw, and for non-ferrous metals by a general saw's 120 m/min when none is described (common practice, no source)", () => {
    expect(prepare("round 4", "6061")).toMatchObject({ speed: 120_000, capped: "general" });
    expect(prepare("round 4", "6061", "bi-metal", { maximumBandSpeed: 150_000 })).toMatchObject({
      speed: 150_000,
      capped: "saw",
    });
    expect(prepare("round 4", "A36").capped).toBe("none");
  });

  it("never runs under the saw's slowest; the chip is thinned by as much", () => {
    const plain = prepare("round 4", "304");
    const fast = prepare("round 4", "304", "bi-metal", { minimumBandSpeed: plain.speed * 1.2 });
    const pitch = readPitch("4/6");
    expect(fast.speed * fast.forPitch(pitch).chips.load).toBeCloseTo(plain.speed * plain.forPitch(pitch).chips.load, 6);
    expect(fast.tooFast).toBe(true);
  });

  it("leaves at the band what the drive and the idle band do not take: 4 kW, 0.75, 750 W idle: 2437.5 W", () => {
    expect(
      prepare("round 4", "304", "bi-metal", { motorPower: 4000 }).forPitch(readPitch("4/6")).limits.power,
    ).toBeCloseTo(0.75 * 3250, 9);
    expect(
      prepare("round 4", "304", "bi-metal", { motorPower: 550 }).forPitch(readPitch("4/6")).limits.power,
    ).toBeCloseTo(0.75 * (550 - 192.5), 9);
    expect(
      prepare("round 4", "304", "bi-metal", { motorPower: 1000, idlePower: 300, driveEfficiency: 0.8 }).forPitch(
        readPitch("4/6"),
      ).limits.power,
    ).toBeCloseTo(560, 9);
  });

  it("takes the least of the saw's thrust and half of what the band stands", () => {
    const at = (saw: Parameters<typeof work>[3]) =>
      prepare("square 4", "304", "bi-metal", saw).forPitch(readPitch("4/6")).limits.cuttingForce;
    expect(at({})).toBeUndefined();
    expect(at({ maximumFeedForce: 400 })!(0)).toBeCloseTo(500, 9);
    expect(at({ bandWidth: 34 })!(0)).toBeGreaterThan(at({ bandWidth: 34, maximumFeedForce: 100 })!(0));
    expect(at({ bandWidth: 34 })!(100)).toBeGreaterThan(at({ bandWidth: 34 })!(0));
  });
});
