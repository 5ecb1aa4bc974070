import { describe, expect, it } from "vitest";
import { groups } from "../../src/data/groups";
import { fixture } from "../material/fixture";

const byName = new Map<string, (typeof groups)[number]>(groups.map((group) => [group.name, group]));

describe("the 21 cutting groups (each value with its mark in docs/sources.md)", () => {
  const rows = fixture("groups.csv");

  it("are all there, once, and no name is a code", () => {
    expect(groups.map(({ name }) => name)).toEqual(rows.map(([name]) => name));
    expect(new Set(groups.map(({ name }) => name)).size).toBe(21);
  });

  it.each(rows)("%s, ISO 513 %s", (name, letter, kc11, mc, ratio, hardness, ...bands) => {
    const group = byName.get(name!)!;
    expect(group).toMatchObject({
      letter,
      kc11: Number(kc11),
      mc: Number(mc),
      chipVolume: Number(ratio),
      maximumHardness: Number(hardness),
    });
    (["bi-metal", "carbide"] as const).forEach((blade, i) => {
      const [speed, bite, spread] = bands.slice(3 * i, 3 * i + 3);
      const row = group.blades[blade];
      if (speed === "") return expect(row).toBeUndefined();
      expect(row!.speed / 1000).toBeCloseTo(Number(speed), 9);
      expect(row!.bite * 1000).toBeCloseTo(Number(bite), 9);
      expect(row!.spread).toBe(Number(spread));
    });
  });

  it("carbide is faster and bites at least as much; where nothing is published the spread is 2 or more", () => {
    for (const { blades } of groups) {
      const biMetal = blades["bi-metal"];
      if (biMetal === undefined) continue;
      expect(blades.carbide.speed).toBeGreaterThan(biMetal.speed);
      expect(blades.carbide.bite).toBeGreaterThanOrEqual(biMetal.bite);
      for (const row of [biMetal, blades.carbide])
        expect(row.basis.bite.text.includes("calibrated") && row.spread > 2).toBe(false);
    }
  });

  it("carry the basis of every value; both groups of tool steel answer to one label", () => {
    for (const { basis, blades, name, label } of groups) {
      for (const text of [basis.force, basis.hardness, basis.ratio])
        expect(text).toMatch(/from memory|read|derived|judgement|second-hand|common practice/);
      for (const row of [blades["bi-metal"], blades.carbide])
        if (row !== undefined) for (const text of [row.basis.speed.text, row.basis.bite.text, row.basis.spread]) expect(text).not.toBe("");
      expect(label).toBe(name.startsWith("tool steel") ? "tool steel" : name);
    }
  });
});
