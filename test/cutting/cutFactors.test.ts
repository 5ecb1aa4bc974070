import { describe, expect, it } from "vitest";
import { cutFactors } from "../../src/cutting/cutFactors";
import { bladeRow } from "../../src/cutting/bladeRow";
import { work } from "./fixture";

const factors = (...args: Parameters<typeof work>) => {
  const { section, material, shop } = work(...args);
  return cutFactors({ profile: section.profile(), material, group: bladeRow(material, "carbide").group, shop });
};

describe("the factors on speed and chip (each with its mark in data/cuttingConstants)", () => {
  it("name the interrupted cut by the kind of work", () => {
    expect(
      ["square 100 mm", "tube 6x0.5", "W12x50", "round 2 bundle 3x4", "tube 1x0.065 bundle 5x6"].map(
        (s) => factors(s, "A36").interrupted,
      ),
    ).toEqual([1, 0.75, 0.75, 0.8, 0.65]);
  });

  it("take speed and chip back above the group's hardness only: 17-4PH H900, mean 418 HB over 365", () => {
    const soft = factors("square 100 mm", "17-4PH");
    const hard = factors("square 100 mm", "17-4PH H900");
    expect(soft).toMatchObject({ speed: 1, chip: 1 });
    expect(hard.speed).toBeCloseTo((365 / 418) ** 1.2, 2);
    expect(hard.chip).toBeCloseTo((365 / 418) ** 0.5, 2);
  });

  it("dry, mist and a worn saw multiply, and never leave less than 0.35 (common practice, no source)", () => {
    expect(factors("square 100 mm", "A36", "bi-metal", { coolant: "dry" })).toMatchObject({ speed: 0.7, chip: 0.8 });
    expect(factors("square 100 mm", "A36", "bi-metal", { coolant: "mist" })).toMatchObject({ speed: 0.8, chip: 0.9 });
    const worst = factors("square 100 mm", "A36", "bi-metal", { coolant: "dry", sawCondition: "worn" });
    expect(worst.speed * worst.chip).toBeCloseTo(0.35, 12);
    expect(factors("square 100 mm", "AZ31B", "bi-metal", { coolant: "dry" })).toMatchObject({ speed: 1, chip: 1 });
  });
});
