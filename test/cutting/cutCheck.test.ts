import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { cutCheck } from "../../src/cutting/cutCheck";
import { readPitch } from "../../src/blade/readPitch";
import type { Shop } from "../../src/shop/shop";
import { predict, work } from "./fixture";
import { said } from "./phrases";

const judge = (
  size: string,
  grade: string,
  pitch: string | number,
  speed: number,
  minutes: number,
  saw: Partial<Shop> = {},
  blade: "bi-metal" | "carbide" = "bi-metal",
) => cutCheck({ ...work(size, grade, blade, saw), pitch: readPitch(pitch), bandSpeed: speed, minutes });

describe("a cut as it runs now", () => {
  it("17-4PH 7 in round in 18 minutes, 2/3 at 30.48 m/min: 2.138 in²/min at a mean chip of 3.29 µm (T2, T5: common practice; derived)", () => {
    const got = judge("round 7", "17-4PH", 2.5, 30_480, 18);
    expect(got.rate / 645.16).toBeCloseTo(2.13803, 5);
    expect(got.chipThickness * 1000).toBeCloseTo(3.29259, 4);
    expect(got.feed).toBeCloseTo(177.8 / 18, 9);
    expect(said(got.verdict)).toMatch(/^Leave it as it is/);
    expect(got).toMatchObject({ bandSpeedToSet: 30_480, feedToSet: got.feed, minutesSaved: 0 });
  });

  it("gives its results in the order in which they are read", () => {
    expect(Object.keys(judge("round 7", "17-4PH", 2.5, 30_480, 18))).toEqual([
      "verdict",
      "rate",
      "chipThickness",
      "teeth",
      "gulletFill",
      "speedAgainstGroup",
      "feed",
      "bandSpeedToSet",
      "feedToSet",
      "minutesSaved",
      "expectedLow",
      "expectedHigh",
      "causes",
      "cautions",
    ]);
  });

  it("what to set, and the minutes that it saves, by the pitch that the verdict names", () => {
    const best = predict("square 4", "A36");
    const got = judge("square 4", "A36", "10/14", best.run.speed, 10);
    expect(said(got.verdict)).toMatch(/^Take 3\/4 first|^Raise the feed/);
    const fine = judge(
      "square 4",
      "A36",
      "10/14",
      best.run.speed,
      predict("square 4", "A36", "bi-metal", {}, "10/14").run.minutes,
    );
    expect(said(fine.verdict)).toMatch(/^Take 3\/4 first: at 10\/14 this cut takes 3\.43 times as long/);
    expect(fine.minutesSaved).toBeCloseTo((fine.rate === 0 ? 0 : 1) * (best.run.minutes * 3.43 - best.run.minutes), 1);
    expect(fine.feedToSet).toBeCloseTo(101.6 / best.run.minutes, 9);
  });

  it.each([
    ["tube 2x0.065", "A36", "3/4", 90_000, 1, /finer pitch first: 14\/18/],
    ["round 7", "A36", "10/14", 70_000, 6, /coarser pitch first|Take 2\/3 first/],
    ["round 4", "304", "3/4", 90_000, 4, /Slow the band first/],
    ["round 2", "A36", "4/6", 80_000, 0.12, /Reduce the feed first/],
    ["round 4", "304", "3/4", 33_000, 40, /Raise the feed first: chip load .* rubs/],
    ["round 4", "A36", "3/4", 40_000, 2.6, /Raise the band speed first/],
    ["round 4", "A36", "3/4", 80_000, 1.2, /Leave it as it is/],
  ] as const)("%s %s %s at %s mm/min in %s min", (size, grade, pitch, speed, minutes, verdict) => {
    expect(said(judge(size, grade, pitch, speed, minutes).verdict)).toMatch(verdict);
  });

  it("judged as the other class of blade, the verdict differs", () => {
    const { run } = predict("round 7", "4140");
    const right = said(judge("round 7", "4140", "2/3", run.speed, run.minutes).verdict);
    const wrong = said(judge("round 7", "4140", "2/3", run.speed, run.minutes, {}, "carbide").verdict);
    expect(right).toMatch(/^Leave it as it is/);
    expect(wrong).not.toMatch(/^Leave it as it is/);
  });

  it("speed against the group is 1 at the group's own speed; the shop's rate spread is not the measure", () => {
    const { run } = predict("round 7", "4140");
    const got = judge("round 7", "4140", "2/3", run.speed, run.minutes * 1.3, { rateSpread: 1.05 });
    expect(got.speedAgainstGroup).toBeCloseTo(1, 12);
    expect(said(got.verdict)).toMatch(/^Leave it as it is/);
  });

  it("says that the motor holds it where it does", () => {
    const saw = { motorPower: 1100 };
    const { run } = predict("round 7", "4140", "bi-metal", saw, "2/3");
    expect(said(judge("round 7", "4140", "2/3", run.speed, run.minutes, saw).verdict)).toMatch(
      /Motor-limited: .* hp available at the band\.$/,
    );
  });

  it("where nothing can be predicted the verdict is the reason, and what runs is still given", () => {
    const got = judge("round 4", "tantalum", "3/4", 30_000, 5);
    expect(said(got.verdict)).toMatch(/^No cutting data for/);
    expect(got.rate).toBeGreaterThan(0);
    expect(got.chipThickness).toBeGreaterThan(0);
    expect(got.feedToSet).toBeInstanceOf(InputError);
    const thin = judge("tube 2x0.065", "A36", "3/4", 90_000, 1, {}, "carbide");
    expect(said(thin.verdict)).toMatch(/A bi-metal 14\/18 fits/);
    expect(thin.gulletFill).toBeGreaterThan(0);
  });
});
