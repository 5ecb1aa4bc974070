import { describe, expect, it } from "vitest";
import { choosePitch } from "../../src/cutting/choosePitch";
import { nominalCut } from "../../src/cutting/nominalCut";
import { readPitch } from "../../src/blade/readPitch";
import { work } from "./fixture";

/** Output of a second implementation of the same rules, no saw; not validation. "none" where no pitch is lawful. */
const table: readonly (readonly [
  section: string,
  lowCarbon: string,
  phStainless: string,
  aluminium: string,
  nickel: string,
  lowCarbonCarbide: string,
])[] = [
  ["round 0.5", "14/18", "14/18", "8/12", "14/18", "none"],
  ["round 1", "8/12", "10/14", "5/8", "14/18", "none"],
  ["round 2", "5/8", "6/10", "3/4", "6/10", "3/4"],
  ["round 7", "2/3", "2/3", "1.4/2", "2/3", "2/3"],
  ["round 10", "1.4/2", "1.4/2", "1.1/1.6", "2/3", "1.4/2"],
  ["round 16", "0.75/1.25", "0.75/1.25", "0.75/1.25", "1.1/1.6", "0.75/1.25"],
  ["flat 6x1", "2/3", "2/3", "1.4/2", "2/3", "2/3"],
  ["flat 6x1 on edge", "8/12", "8/12", "4/6", "10/14", "3/4"],
  ["tube 2x0.065", "14/18", "14/18", "14/18", "14/18", "none"],
  ["tube 2x0.25", "14/18", "14/18", "8/12", "14/18", "none"],
  ["tube 6x0.5", "6/10", "5/8", "5/8", "6/10", "none"],
  ["tube 12x0.25", "10/14", "10/14", "8/12", "14/18", "none"],
  ["box 4x4x1/4", "10/14", "10/14", "6/10", "10/14", "none"], // aluminium: 8/12 there, a near tie; its corners were a little rounder,
  ["box 8x4x3/8", "6/10", "5/8", "5/8", "5/8", "none"],
  ["W8x31", "6/10", "6/10", "5/8", "8/12", "none"],
  ["W12x50", "5/8", "5/8", "4/6", "5/8", "3/4"],
  ["W24x68", "4/6", "4/6", "3/4", "5/8", "3/4"],
  ["round 2 bundle 3x4", "3/4", "3/4", "3/4", "3/4", "3/4"],
];
const pick = (section: string, material: string, blade: "bi-metal" | "carbide"): string => {
  try {
    return choosePitch(work(section, material, blade)).text;
  } catch {
    return "none";
  }
};

describe("the pitch chosen", () => {
  it.each(table)("%s", (section, p, ph, al, ni, carbide) => {
    expect([
      pick(section, "A36", "bi-metal"),
      pick(section, "17-4PH", "bi-metal"),
      pick(section, "6061", "bi-metal"),
      pick(section, "N06625", "bi-metal"),
      pick(section, "A36", "carbide"),
    ]).toEqual([p, ph, al, ni, carbide]);
  });

  it("is one that is stocked, when the shop names them", () => {
    const stocked = ["4/6", "1.4/2", "10/14"].map(readPitch);
    expect(choosePitch(work("round 7", "A36", "bi-metal", { pitchesStocked: stocked })).text).toBe("1.4/2");
    expect(choosePitch(work("round 7", "A36", "carbide", { pitchesStocked: stocked })).text).toBe("1.4/2");
    expect(() => choosePitch(work("round 7", "A36", "carbide", { pitchesStocked: [readPitch("10/14")] }))).toThrow(
      /None of the pitches stocked/,
    );
  });

  it("the shop's own rate factor does not change it, and a higher one never slows the cut", () => {
    for (const [size, grade] of [
      ["W36x150", "6061"],
      ["HSS6x4x1/4", "4140"],
      ["W12x50", "C36000"],
    ] as const) {
      const rates = [0.5, 1, 2, 4].map(
        (rateFactor) => nominalCut({ ...work(size, grade, "bi-metal", { rateFactor }), pitch: undefined }).run.rate,
      );
      for (let i = 1; i < rates.length; i += 1) expect(rates[i]!).toBeGreaterThanOrEqual(rates[i - 1]! * (1 - 1e-9));
      expect(choosePitch(work(size, grade, "bi-metal", { rateFactor: 4 })).text).toBe(
        choosePitch(work(size, grade)).text,
      );
    }
  });

  it("a weak motor does not change: the band is slowed instead", () => {
    expect(choosePitch(work("round 7", "A36", "bi-metal", { motorPower: 800 })).text).toBe(
      choosePitch(work("round 7", "A36")).text,
    );
  });
});
