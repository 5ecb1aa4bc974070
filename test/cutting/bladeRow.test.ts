import { describe, expect, it } from "vitest";
import { bladeRow } from "../../src/cutting/bladeRow";
import { findMaterial } from "../../src/material/findMaterial";

const row = (grade: string, blade: "bi-metal" | "carbide") => bladeRow(findMaterial(grade, []), blade);

describe("group and row of a class of blade", () => {
  it("304: 120 ft/min (Machinery's Handbook, 31st ed., p. 1245, read) and the bite of its group", () => {
    const { group, row: own } = row("304", "bi-metal");
    expect([group.name, own.speed / 304.8, own.bite]).toEqual(["austenitic stainless", expect.closeTo(120, 9), 0.046]);
    expect(own.basis.speed).toMatchObject({ mark: "read" });
  });
  it("303 bites 1.3 times as much (cutting chart), with carbide the root of it, and runs the root of its speed", () => {
    const group = findMaterial("303", []).group!;
    expect(row("303", "bi-metal").row.bite / group.blades["bi-metal"]!.bite).toBeCloseTo(1.3, 12);
    const carbide = row("303", "carbide").row;
    expect(carbide.bite / group.blades.carbide.bite).toBeCloseTo(Math.sqrt(1.3), 12);
    expect(carbide.speed / group.blades.carbide.speed).toBeCloseTo(
      Math.sqrt((130 * 304.8) / group.blades["bi-metal"]!.speed),
      12,
    );
    expect(carbide.basis).toBe(carbide.basis);
    expect(carbide.basis.speed).toEqual(group.blades.carbide.basis.speed);
  });
  it("a grade without its own takes its group's; a heat-treated condition takes no speed of its grade", () => {
    expect(row("2205", "bi-metal").row).toBe(findMaterial("2205", []).group!.blades["bi-metal"]);
    expect(row("4140 HT", "bi-metal").row.speed).toBe(46_000);
  });
  it("says why there is none", () => {
    expect(() => row("tantalum", "carbide")).toThrow(/No cutting data/);
    expect(() => row("ihcp-1045", "bi-metal")).toThrow(/too hard for bi-metal/);
    expect(() => row("hardened steel 60 HRC", "bi-metal")).toThrow(/too hard for bi-metal/);
  });
});
