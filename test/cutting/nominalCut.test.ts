import { expect, it } from "vitest";
import { nominalCut } from "../../src/cutting/nominalCut";
import { inch2, predict, work } from "./fixture";

it("17-4PH, 7 in round: 2.0 to 2.5 in²/min (common practice, no source)", () => {
  const { rate } = nominalCut({ ...work("round 7", "17-4PH"), pitch: undefined }).run;
  expect(rate / inch2).toBeGreaterThan(2);
  expect(rate / inch2).toBeLessThan(2.5);
});

it("is the middle of the prediction, and refuses a band that cannot be pushed", () => {
  const got = nominalCut({ ...work("round 7", "4140"), pitch: undefined });
  expect([got.run.rate, got.pitch.text, got.speed]).toEqual([
    predict("round 7", "4140").rate,
    "2/3",
    predict("round 7", "4140").speed,
  ]);
  expect(() =>
    nominalCut({
      ...work("round 24", "ihcp-1045", "carbide", { bandWidth: 27, bandTension: 100, guideGap: 400 }),
      pitch: undefined,
    }),
  ).toThrow(/cannot be pushed/);
});
