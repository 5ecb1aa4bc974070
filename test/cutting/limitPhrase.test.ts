import { expect, it } from "vitest";
import { limitPhrase } from "../../src/cutting/limitPhrase";
import { predict } from "./fixture";
import { said } from "./phrases";

it.each([
  ["usual rate", () => predict("flat 6x1", "A36"), /^Usual rate for low-carbon steel \(100 % of the time\)\.$/],
  ["tooth load", () => predict("tube 2x0.065", "A36"), /^Tooth load: only 1\.1 teeth share the thinnest part/],
  ["gullet", () => predict("round 4", "6061", "bi-metal", {}, "6/10"), /^Gullets full where the work is widest, 4 in/],
  [
    "motor",
    () => predict("round 7", "4140", "bi-metal", { motorPower: 1100 }),
    /^Motor: .* hp are left at the band, so the band runs slower/,
  ],
  [
    "feed force",
    () => predict("round 16", "17-4PH", "bi-metal", { bandWidth: 27, bandTension: 200 }),
    /^Feed force: a 1\.063 in band over a span of/,
  ],
  [
    "maximum feed",
    () => predict("flat 6x1", "A36", "bi-metal", { maximumFeed: 20 }),
    /^Maximum feed of the saw \(100 % of the time\)/,
  ],
  [
    "top speed of the saw",
    () => predict("flat 6x1", "6061", "bi-metal", { maximumBandSpeed: 150_000 }),
    /^Maximum band speed of the saw, 492\.13 ft\/min/,
  ],
  [
    "top speed of a general saw",
    () => predict("flat 6x1", "6061"),
    /^Usual top speed of a general saw, 393\.7 ft\/min: give your saw's own/,
  ],
  [
    "constant feed",
    () => predict("W12x50", "A36", "bi-metal", { feedMode: "constant feed", bandWidth: 34 }),
    /constant feed, set at a depth of/,
  ],
] as const)("names what binds: %s", (_, run, pattern) => {
  expect(said(limitPhrase(run()))).toMatch(pattern);
});

it("names a second limit above a fifth of the time", () => {
  expect(said(limitPhrase(predict("box 4x4x1/4", "A36")))).toMatch(
    /; (gullet|tooth load) for \d+ %\.$|tooth load|Tooth load/,
  );
});
