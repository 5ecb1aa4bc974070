import { describe, expect, it } from "vitest";
import { choosePitch } from "../../src/cutting/choosePitch";
import { judgeCut } from "../../src/cutting/judgeCut";
import { meanChip } from "../../src/cutting/meanChip";
import { predict, work } from "./fixture";
import { said } from "./phrases";

/** A cut at a share of the predicted speed and rate, with a gullet fill. */
const judge = (
  typed: string | undefined,
  speed: number,
  rate: number,
  fill?: number,
  size = "square 4",
  grade = "304",
) => {
  const predicted = predict(size, grade, "bi-metal", {}, typed);
  const { pitch, run, cut } = predicted;
  const seen = { rate: predicted.rate * rate, bandSpeed: run.speed * speed };
  const chip = meanChip({ rate: seen.rate, pitch, speed: seen.bandSpeed, profile: cut.profile });
  const gulletFill = fill ?? (run.gulletFill * rate) / speed;
  return judgeCut({ ...seen, chip, gulletFill, predicted, free: predicted, best: choosePitch(work(size, grade)) });
};

describe("the verdict (thresholds: judgement; S of austenitic stainless is 1.6)", () => {
  it.each([
    ["within 2 % of every threshold", () => judge(undefined, 1, 1.61), "as it runs", /^Leave it as it is/],
    ["as predicted", () => judge(undefined, 1, 1), "as it runs", /^Leave it as it is: .* is within the usual/],
    ["band far too fast", () => judge(undefined, 1.4, 1), "this pitch", /^Slow the band first/],
    [
      "a chip too thick",
      () => judge(undefined, 1, 1.7),
      "this pitch",
      /^Reduce the feed first: chip load .* exceeds what a tooth takes, /,
    ],
    [
      "a chip too thin",
      () => judge(undefined, 1, 0.5),
      "this pitch",
      /^Raise the feed first: chip load .* is too thin and rubs; use at least/,
    ],
    ["band far too slow", () => judge(undefined, 0.6, 0.6), "this pitch", /^Raise the band speed first/],
    [
      "far too fine",
      () => judge("10/14", 1, 1),
      "best pitch",
      /^Take 3\/4 first: at 10\/14 this cut takes 3\.43 times as long/,
    ],
    [
      "overfull gullets",
      () => judge("4/6", 1, 1, 1.4),
      "best pitch",
      /^Take a coarser pitch first: 3\/4; the gullets hold 1\.4\d* times/,
    ],
    [
      "too few teeth",
      () => judge("3/4", 1, 1, undefined, "tube 4x0.25"),
      "best pitch",
      /^Take a finer pitch first: 6\/10 puts 2(\.\d+)? teeth/,
    ],
    [
      "slow, with a chip as it should be",
      () => judge(undefined, 0.75, 0.6),
      "this pitch",
      /^Raise the feed first: .* is below the usual/,
    ],
    ["fast, with a chip as it should be", () => judge(undefined, 1.25, 1.7), "as it runs", /^Faster than usual/],
  ] as const)("%s", (_, judged, set, says) => {
    const verdict = judged();
    expect(said(verdict.says)).toMatch(says);
    expect(verdict.set).toBe(set);
  });
});
