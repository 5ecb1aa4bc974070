import { describe, expect, it } from "vitest";
import { groups } from "../../src/data/groups";
import { findMaterial } from "../../src/material/findMaterial";
import { predict } from "./fixture";
import { anyRefusal as refusal } from "../section/fixture";

describe("low and high", () => {
  it("no saw described: the rate ÷ and × the spread of the group and class", () => {
    for (const [grade, blade] of [
      ["A36", "bi-metal"],
      ["304", "carbide"],
      ["N07718", "bi-metal"],
    ] as const) {
      const { rate, rateLow, rateHigh, cut } = predict("W12x50", grade, blade);
      expect(cut.row.spread).toBe(findMaterial(grade, []).group!.blades[blade]!.spread);
      expect([rate / rateLow, rateHigh / rate]).toEqual([
        expect.closeTo(cut.row.spread, 12),
        expect.closeTo(cut.row.spread, 12),
      ]);
    }
  });
  it("a saw: never nearer than 1.15, also under the maximum feed alone", () => {
    const got = predict("flat 6x1", "A36", "bi-metal", { maximumFeed: 20 });
    expect([got.rateHigh / got.rate, got.rate / got.rateLow]).toEqual([
      expect.closeTo(1.15, 9),
      expect.closeTo(1.15, 9),
    ]);
  });
  it("a saw that limits nothing leaves low and high as without it", () => {
    const [free, strong] = [
      predict("round 7", "304"),
      predict("round 7", "304", "bi-metal", { motorPower: 1e6, idlePower: 1 }),
    ];
    expect([strong.rateLow / free.rateLow, strong.rateHigh / free.rateHigh]).toEqual([
      expect.closeTo(1, 9),
      expect.closeTo(1, 9),
    ]);
  });
  it("the shop's rate spread replaces it, without a floor", () => {
    for (const saw of [{}, { motorPower: 1e6, idlePower: 1 }]) {
      const got = predict("round 7", "304", "bi-metal", { rateSpread: 1.05, ...saw });
      expect([got.rateHigh / got.rate, got.rate / got.rateLow]).toEqual([
        expect.closeTo(1.05, 9),
        expect.closeTo(1.05, 9),
      ]);
    }
  });
});

it("a rate factor k multiplies rate, low and high by k where nothing of a saw binds", () => {
  const [one, own] = [predict("tube 6x0.5", "4140"), predict("tube 6x0.5", "4140", "bi-metal", { rateFactor: 1.3 })];
  for (const of of ["rate", "rateLow", "rateHigh"] as const) expect(own[of] / one[of]).toBeCloseTo(1.3, 12);
});

it("magnesium is cut dry by default, without a derate", () => {
  expect(predict("round 3", "AZ31B").rate).toBe(predict("round 3", "AZ31B", "bi-metal", { coolant: "dry" }).rate);
});

it("inch and metric are one, and a bundle of one is the piece", () => {
  expect(predict("flat 6x1 in", "304").rate / predict("flat 152.4x25.4 mm", "304").rate).toBeCloseTo(1, 12);
  expect(predict("round 3 bundle 1x1", "4140").rate).toBeCloseTo(predict("round 3", "4140").rate, 6);
});

it("hardened steel has a way in at both hardnesses, by name and as the like of an own material", () => {
  expect(predict("round 4", "hardened steel 50 HRC", "carbide").cut.group.name).toBe("hardened steel to 55 HRC");
  expect(predict("round 4", "hardened steel 60 HRC", "carbide").cut.group.name).toBe("hardened steel over 55 HRC");
  const used = new Set(["hardened steel 50 HRC", "hardened steel 60 HRC"].map((g) => findMaterial(g, []).group));
  expect(groups.filter((g) => g.letter === "H").every((g) => used.has(g))).toBe(true);
});

describe("a band that cannot be pushed", () => {
  const slack = { bandWidth: 27, bandTension: 150, guideGap: 200 };
  const weak = { bandWidth: 27, bandTension: 100, guideGap: 400 };
  it("names the nearest coarser pitch that works", () => {
    const { reason, sentence } = refusal(() => predict("round 16", "17-4PH", "bi-metal", slack, "3/4"));
    expect(reason).toBe("none");
    expect(sentence).toMatch(/cannot be pushed into 44 teeth; the nearest pitch that it can push is \S+$/);
    const named = /push is (\S+)$/.exec(sentence)![1]!;
    expect(() => predict("round 16", "17-4PH", "bi-metal", slack, named)).not.toThrow();
  });
  it("or says that none does", () => {
    expect(refusal(() => predict("round 24", "hardened steel 60 HRC", "carbide", weak)).sentence).toMatch(
      /nor into any coarser pitch: closer guides/,
    );
  });
});
