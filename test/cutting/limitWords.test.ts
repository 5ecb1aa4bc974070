import { describe, expect, it } from "vitest";
import { limitWords } from "../../src/cutting/limitWords";
import { predict } from "./fixture";
import { said } from "./phrases";

describe("what holds the cut back, and what to change first", () => {
  it.each([
    [
      "usual rate",
      () => predict("flat 6x1", "A36"),
      /^Usual rate for low-carbon steel \(100 % of the time\)\.$/,
      /Nothing on this saw/,
    ],
    [
      "usual rate, judgement",
      () => predict("flat 6x1", "N07718"),
      /^Usual rate for nickel and cobalt alloys, which is judgement/,
      /Nothing on this saw/,
    ],
    [
      "another pitch",
      () => predict("square 4", "A36", "bi-metal", {}, "10/14"),
      /^Usual rate/,
      /^Take 3\/4: at 10\/14 this cut takes 3\.43 times as long\.$/,
    ],
    [
      "gullet",
      () => predict("square 0.5", "6061"),
      /^Gullets full where the work is widest, 0\.5 in/,
      /lay it so that less/,
    ],
    [
      "motor",
      () => predict("round 7", "4140", "bi-metal", { motorPower: 1100 }),
      /^Motor-limited: .* hp available at the band/,
      /idle current/,
    ],
    [
      "feed force",
      () => predict("round 16", "17-4PH", "bi-metal", { bandWidth: 27, bandTension: 200 }),
      /^Feed force: a 1\.063 in band over a span of/,
      /guides closer/,
    ],
    [
      "maximum feed",
      () => predict("flat 6x1", "A36", "bi-metal", { maximumFeed: 20 }),
      /^Maximum feed of the saw \(100 % of the time\)/,
      /more bars at once/,
    ],
    [
      "top speed of the saw",
      () => predict("flat 6x1", "6061", "bi-metal", { maximumBandSpeed: 150_000 }),
      /^Maximum band speed of the saw, 492\.13 ft\/min/,
      /faster band/,
    ],
    [
      "top speed of a general saw",
      () => predict("flat 6x1", "6061"),
      /^Usual top speed of a general saw, 393\.7 ft\/min: give your saw's own/,
      /top band speed of your saw/,
    ],
    [
      "slowest speed of the saw",
      () => predict("flat 6x1", "304", "bi-metal", { minimumBandSpeed: 40_000 }),
      /^Usual rate/,
      /slower saw/,
    ],
    [
      "constant feed",
      () => predict("W12x50", "A36", "bi-metal", { feedMode: "constant feed", bandWidth: 34 }),
      /constant feed, set at a depth of/,
      /slows only where the work is wide/,
    ],
  ] as const)("%s", (_, run, limit, change) => {
    const words = limitWords(run());
    expect(said(words.limit)).toMatch(limit);
    expect(said(words.changeFirst)).toMatch(change);
  });
  it("names a second limit above a fifth of the time", () => {
    const got = predict("W12x50", "A992", "bi-metal", { motorPower: 1500 });
    const shares = { ...got.run.shares, "usual rate": 0, "motor power": 0.7, gullet: 0.3 };
    expect(said(limitWords({ ...got, run: { ...got.run, shares } }).limit)).toMatch(
      /^Motor-limited: .* available at the band \(70 % of the time\); gullet for 30 %\.$/,
    );
  });
});
