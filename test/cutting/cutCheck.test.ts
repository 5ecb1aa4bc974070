import { describe, expect, it } from "vitest";
import { cutCheck } from "../../src/cutting/cutCheck";
import { readPitch } from "../../src/blade/readPitch";
import { predict, work } from "./fixture";
import { said } from "./phrases";

const judge = (
  size: string,
  grade: string,
  pitch: string | number,
  speed: number,
  minutes: number,
  blade: "bi-metal" | "carbide" = "bi-metal",
) => cutCheck({ ...work(size, grade, blade), pitch: readPitch(pitch), bandSpeed: speed, minutes });

describe("a cut as it runs now", () => {
  it("17-4PH 7 in round in 18 minutes, 2/3 at 30.48 m/min: 2.138 in²/min at a mean chip of 3.29 µm (T2, T5: common practice; derived)", () => {
    const got = judge("round 7", "17-4PH", 2.5, 30_480, 18);
    expect(got.rate / 645.16).toBeCloseTo(2.13803, 5);
    expect(got.chipThickness * 1000).toBeCloseTo(3.29259, 4);
    expect(said(got.verdict)).toMatch(/^Leave it as it is/);
  });

  it.each([
    ["tube 2x0.065", "A36", "3/4", 90_000, 1, /finer pitch first/],
    ["round 7", "A36", "10/14", 80_000, 1, /coarser pitch first/],
    ["round 4", "304", "3/4", 90_000, 4, /Slow the band first/],
    ["round 2", "A36", "2/3", 80_000, 0.12, /Take feed off first/],
    ["round 4", "304", "3/4", 33_000, 40, /Raise the feed first, or take a coarser pitch: a chip of .* rubs/],
    ["round 4", "A36", "3/4", 40_000, 1.5, /Raise the band speed first/],
    ["round 4", "A36", "3/4", 80_000, 2, /Raise the feed first: .* is below the usual/],
    ["round 4", "A36", "3/4", 80_000, 0.75, /Leave it as it is|Faster than usual/],
  ] as const)("%s %s %s at %s mm/min in %s min", (size, grade, pitch, speed, minutes, verdict) => {
    expect(said(judge(size, grade, pitch, speed, minutes).verdict)).toMatch(verdict);
  });

  it("judged as the other class of blade, the verdict differs", () => {
    const got = predict("round 7", "4140");
    const minutes = got.run.minutes;
    const right = said(judge("round 7", "4140", "2/3", got.speed, minutes).verdict);
    const wrong = said(judge("round 7", "4140", "2/3", got.speed, minutes, "carbide").verdict);
    expect(right).toMatch(/^Leave it as it is/);
    expect(wrong).not.toBe(right);
    expect(wrong).not.toMatch(/^Leave it as it is/);
  });

  it("speed against the group is 1 at the group's own speed", () => {
    const got = predict("round 7", "4140");
    expect(judge("round 7", "4140", "2/3", got.speed, 6).speedAgainstGroup).toBeCloseTo(1, 12);
  });
});
