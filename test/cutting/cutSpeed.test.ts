import { describe, expect, it } from "vitest";
import { bladeRow } from "../../src/cutting/bladeRow";
import { cutSpeed } from "../../src/cutting/cutSpeed";
import { findMaterial } from "../../src/material/findMaterial";
import type { Shop } from "../../src/shop/shop";
import { shop } from "./fixture";

const speed = (grade: string, width: number, saw: Partial<Shop> = {}) => {
  const material = findMaterial(grade, []);
  return cutSpeed({ ...bladeRow(material, "bi-metal"), material, meanWidth: width, shop: shop(saw) });
};
const of = (grade: string, saw: Partial<Shop> = {}) => speed(grade, 101.6, saw).speed / 304.8;

describe("band speed", () => {
  it("by size: 1.15, 1.12, 1.10, 1, 0.88 at 0.25, 0.75, 1.25, 4, 8 in (Machinery's Handbook, 31st ed., p. 1245, read), 0.70 at 24 in (judgement)", () => {
    const sizes = [
      [0.1, 1.15],
      [0.25, 1.15],
      [0.75, 1.12],
      [1.25, 1.1],
      [4, 1],
      [8, 0.88],
      [24, 0.7],
      [40, 0.7],
    ] as const;
    for (const [width, factor] of sizes) expect(speed("A36", width * 25.4).speed / 304.8 / 270).toBeCloseTo(factor, 9);
  });
  it("without coolant 0.6 (read: reduce by 30 to 50 %), mist 0.8; grey iron and magnesium are cut dry as a rule", () => {
    expect([of("A36", { coolant: "dry" }) / of("A36"), of("A36", { coolant: "mist" }) / of("A36")]).toEqual([
      expect.closeTo(0.6, 9),
      expect.closeTo(0.8, 9),
    ]);
    for (const grade of ["GCI-30", "AZ31B"]) expect(of(grade, { coolant: "dry" })).toBe(of(grade));
    expect(of("65-45-12", { coolant: "dry" })).toBeLessThan(of("65-45-12"));
  });
  it("hardness takes it back above the group's only: 0.60 at 325 HB against 225 (read) is the exponent 1.4", () => {
    expect((225 / 325) ** 1.4).toBeCloseTo(0.6, 2);
    const { hardness, group } = findMaterial("17-4PH H900", []);
    const middle = (hardness.least + hardness.most) / 2;
    expect(of("17-4PH H900") / of("2205")).toBeCloseTo((group!.maximumHardness / middle) ** 1.4, 9);
    expect(of("2205")).toBeCloseTo(30_000 / 304.8, 9);
  });
  it("worn 0.85; the saw's own limits; a general saw's top for non-ferrous metals alone", () => {
    expect(of("A36", { sawCondition: "worn" }) / of("A36")).toBeCloseTo(0.85, 9);
    expect(speed("A36", 101.6, { maximumBandSpeed: 50_000 })).toMatchObject({ speed: 50_000, capped: "saw" });
    expect(speed("6061", 101.6)).toMatchObject({ speed: 120_000, wanted: 200_000, capped: "general" });
    expect(speed("A36", 101.6, { minimumBandSpeed: 90_000 })).toMatchObject({ speed: 90_000, capped: "none" });
  });
  it("refuses a saw that cannot run slowly enough, above 1.5 of what is wanted, and one whose speeds are reversed", () => {
    expect(() => speed("A36", 101.6, { minimumBandSpeed: 270 * 304.8 * 1.49 })).not.toThrow();
    expect(() => speed("A36", 101.6, { minimumBandSpeed: 270 * 304.8 * 1.51 })).toThrow(/slowest band speed/);
    expect(() => speed("A36", 101.6, { minimumBandSpeed: 60_000, maximumBandSpeed: 50_000 })).toThrow(
      /Minimum band speed/,
    );
  });
});
