import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { cutData } from "../../src/cutting/cutData";
import { cuttingForce } from "../../src/cutting/cuttingForce";
import { builtInMaterials } from "../../src/material/builtInMaterials";
import { predict, shape, shop, work } from "./fixture";
import { said } from "./phrases";

const sheet = (...args: Parameters<typeof work>) => cutData({ ...work(...args), pitch: undefined });

describe("the running sheet", () => {
  it("agrees with itself: minutes × rate is the area, feed × minutes the height, power is force × speed", () => {
    for (const size of ["round 7", "flat 6x1", "tube 6x0.5", "W12x50"]) {
      const d = sheet(size, "4140");
      const profile = shape(size).profile();
      expect(d.minutes * d.rate).toBeCloseTo(profile.area, 6);
      expect(d.feed * d.minutes).toBeCloseTo(profile.height, 9);
      expect(d.minutesLow * d.rateHigh).toBeCloseTo(profile.area, 6);
      expect(d.powerAtBand / ((d.feedForce / 0.8) * d.bandSpeed)).toBeCloseTo(1 / 60_000, 12);
      expect(d.powerAtMotor).toBeCloseTo(d.powerAtBand / 0.75 + 300, 9);
      // rate = band speed × bite = band speed × chip × teeth
      expect(d.bandSpeed * d.bite).toBeCloseTo(d.rate, 6);
      expect(d.bandSpeed * d.chipThickness * d.teeth).toBeCloseTo(d.rate, 6);
    }
  });

  it("a motor of its own: the idle power is the one law of the shop block", () => {
    const d = sheet("flat 6x1", "A36", "bi-metal", { motorPower: 4000 });
    expect(d.powerAtMotor).toBeCloseTo(d.powerAtBand / 0.75 + 750, 6);
  });

  it("takes the force of its own chip: flat work, constant contact", () => {
    const got = predict("flat 6x1", "A36");
    const { chipThickness } = sheet("flat 6x1", "A36");
    const force = cuttingForce({ chip: chipThickness, teeth: 152.4 / got.pitch.mean, law: got.cut.saw.force });
    expect(sheet("flat 6x1", "A36").feedForce).toBeCloseTo(0.8 * force, 6);
  });

  it("says which figure is the handbook's and which is judgement", () => {
    expect(said(sheet("round 6", "303").basis)).toMatch(
      /^Band speed: derived, .* Pitch and size: Machinery's Handbook.* Bite: derived, calibrated on .* × 1\.3 for this grade: derived, .* Low to high: derived and judgement/,
    );
    expect(said(sheet("round 4", "A36").basis)).toMatch(/^Band speed: read, Machinery's Handbook/);
    expect(said(sheet("round 4", "N07718", "carbide").basis)).toMatch(
      /Bite: judgement, .* Low to high: judgement throughout/,
    );
  });

  it("ends with what to change first and the cautions that apply", () => {
    const d = sheet("round 4", "AZ31B");
    expect(said(d.changeFirst)).not.toBe("");
    expect(said(d.cautions)).toMatch(/burn.*Guards shut/s);
    expect(said(sheet("round 4", "A36")["break-in"])).toMatch(/about half the feed/);
    expect(said(sheet("round 4", "A36", "bi-metal", { breakInArea: 38_709.6 })["break-in"])).toMatch(
      /for the first 60 in²/,
    );
  });
});

describe("every everyday grade × section × class of blade", () => {
  const sections = ["round 1", "round 4", "round 10", "W12x50", "tube 6x0.5", "round 2 bundle 3x4"].map(
    (s) => [s, shape(s)] as const,
  );
  const tier1 = builtInMaterials().filter((m) => m.isDefault);
  const line = (
    name: string,
    section: (typeof sections)[number][1],
    material: (typeof tier1)[number],
    blade: "bi-metal" | "carbide",
  ): string => {
    try {
      const d = cutData({ section, material, blade, shop: shop(), pitch: undefined });
      return `${material.key} | ${name} | ${blade} | ${d.pitch} | ${(d.bandSpeed / 1000).toFixed(1)} m/min | ${(d.rateLow / 100).toFixed(1)} ${(d.rate / 100).toFixed(1)} ${(d.rateHigh / 100).toFixed(1)} cm²/min`;
    } catch (error) {
      if (error instanceof InputError)
        return `${material.key} | ${name} | ${blade} | refused: ${error.problem.replace(/\{(\w+)\}/g, (_, k: string) => (typeof error.facts[k] === "string" ? error.facts[k] : `<${k}>`))}`;
      throw error;
    }
  };
  it("gives a number or a stated refusal: the reviewed table of cuts (a snapshot, model output, not validation)", async () => {
    const table = tier1.flatMap((m) =>
      sections.flatMap(([name, section]) =>
        (["bi-metal", "carbide"] as const).map((blade) => line(name, section, m, blade)),
      ),
    );
    expect(table.length).toBeGreaterThan(1500);
    await expect(`${table.join("\n")}\n`).toMatchFileSnapshot("../data/cutting/reviewedCuts.snapshot.txt");
  });
});
