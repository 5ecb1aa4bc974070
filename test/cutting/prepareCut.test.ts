import { describe, expect, it } from "vitest";
import { prepareCut } from "../../src/cutting/prepareCut";
import type { Shop } from "../../src/shop/shop";
import { work } from "./fixture";
import { anyRefusal as refusal } from "../section/fixture";

const cut = (size: string, grade = "A36", saw: Partial<Shop> = {}, factor = 1) =>
  prepareCut({ ...work(size, grade, "bi-metal", saw), pitch: undefined }, factor);

describe("a cut put together", () => {
  it("an interrupted cut bites 0.75, a bundle of solids 0.8, of hollow 0.65 (common practice), a worn saw 0.7", () => {
    const bites = ["round 2", "tube 2x0.25", "round 2 bundle 2x2", "tube 2x0.25 bundle 2x2"].map(
      (size) => cut(size).bite,
    );
    expect(bites.map((bite) => bite / 0.079)).toEqual([1, 0.75, 0.8, 0.65].map((f) => expect.closeTo(f, 12) as number));
    expect(cut("round 2", "A36", { sawCondition: "worn" }).bite / bites[0]!).toBeCloseTo(0.7, 12);
  });
  it("no credit for a saw that cannot run as slowly: bite and room fall as the speed is above the one wanted", () => {
    const [usual, fast] = [cut("round 4", "304"), cut("round 4", "304", { minimumBandSpeed: 45_000 })];
    expect(fast.credit).toBeCloseTo(usual.speeds.speed / 45_000, 12);
    for (const of of ["bite", "room"] as const)
      expect((fast[of] * 45_000) / (usual[of] * usual.speeds.speed)).toBeCloseTo(1, 12);
  });
  it("the shop's rate factor: of the grade before its group before the saw; tool steel means both of its groups", () => {
    const rateFactors = [
      { of: "tool steel", value: 0.8 },
      { of: "d2", value: 0.5 },
      { of: "alloy steel", value: 0.7 },
    ];
    const factor = (grade: string) => cut("round 4", grade, { rateFactor: 1.2, rateFactors }).rateFactor;
    expect(["D2", "O1", "M2", "4140", "304"].map(factor)).toEqual([0.5, 0.8, 0.8, 0.7, 1.2]);
    expect(cut("round 4", "O1", { rateFactors }).bite / cut("round 4", "O1").bite).toBeCloseTo(0.8, 12);
  });
  it("rate spread: of the grade before its group before the saw", () => {
    const rateSpreads = [{ of: "tool steel", value: 1.3 }];
    expect(cut("round 4", "M2", { rateSpread: 1.5, rateSpreads }).rateSpread).toBe(1.3);
    expect(cut("round 4", "A36", { rateSpread: 1.5, rateSpreads }).rateSpread).toBe(1.5);
    expect(cut("round 4").rateSpread).toBeUndefined();
  });
  it("says where the rate is judgement alone, until the shop has a figure of its own", () => {
    expect([cut("round 4", "304").judged, cut("round 4", "N07718").judged]).toEqual([false, true]);
    expect(cut("round 4", "N07718", { rateFactors: [{ of: "nickel and cobalt alloys", value: 0.9 }] }).judged).toBe(
      false,
    );
    expect(cut("round 4", "N07718", { rateSpread: 1.4 }).judged).toBe(false);
  });
  it("the last station is the widest contact, without travel", () => {
    const { stations, profile } = cut("W12x50", "A992", { motorPower: 4000 });
    expect(stations.at(-1)).toMatchObject({ travel: 0, contact: profile.maximumWidth });
    expect(stations.reduce((sum, s) => sum + s.travel, 0)).toBeCloseTo(profile.height, 9);
  });
});

describe("refusals", () => {
  it.each([
    ["magnesium with flood coolant", () => cut("round 3", "AZ31B", { coolant: "flood" }), /flood coolant/],
    ["work wider than the saw", () => cut("round 12", "A36", { maximumWidth: 250 }), /the work is .* wide/],
    ["work higher than the saw", () => cut("round 2 bundle 6x1", "A36", { maximumHeight: 250 }), /the work is .* high/],
    [
      "idle power that leaves nothing",
      () => cut("round 2", "A36", { motorPower: 500, idlePower: 500 }),
      /leaves nothing of Motor power/,
    ],
  ] as const)("%s", (_, run, pattern) => {
    expect(refusal(run)).toMatchObject({ reason: "invalid", sentence: expect.stringMatching(pattern) as string });
  });
});
