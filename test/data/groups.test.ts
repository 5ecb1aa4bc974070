import { describe, expect, it } from "vitest";
import { groups } from "../../src/data/groups";
import { fixture } from "../material/fixture";

const spread = (cell: string): number[] => cell.split(" ").map(Number);
const byName = new Map(groups.map((group) => [group.name as string, group]));

describe("the 20 cutting groups (derived, judgement; see docs/method)", () => {
  const rows = fixture("groups.csv");

  it("are all there, once, and no name is a code", () => {
    expect(groups.map(({ name }) => name)).toEqual(rows.map(([name]) => name));
    expect(new Set(groups.map(({ name }) => name)).size).toBe(20);
    for (const { name } of groups) expect(name).toMatch(/^[a-z][A-Za-z0-9 -]{4,}$/);
  });

  it.each(rows)("%s, ISO 513 %s", (name, letter, kc11, mc, ratio, hardness, ...bands) => {
    const group = byName.get(name!)!;
    expect(group).toMatchObject({ letter, kc11: Number(kc11), mc: Number(mc), chipVolume: Number(ratio), maximumHardness: Number(hardness) });
    (["bi-metal", "carbide"] as const).forEach((blade, i) => {
      const [speed, chip, rate] = bands.slice(3 * i, 3 * i + 3);
      const row = group.blades[blade];
      if (speed === "") return expect(row).toBeUndefined();
      const printed = [row!.speed.low, row!.speed.nominal, row!.speed.high].map((value) => value / 1000);
      const chips = [row!.chip.low, row!.chip.nominal, row!.chip.high];
      expect(printed).toEqual(spread(speed!));
      spread(chip!).forEach((value, j) => expect(chips[j]! * 1000).toBeCloseTo(value, 9));
      // 13.78 is itself rounded: half a unit of the last printed place of rate and of teeth
      const predicted = (row!.speed.nominal * row!.chip.nominal * 13.78) / 100;
      expect(Math.abs(predicted / Number(rate) - 1)).toBeLessThan(0.05 / Number(rate) + 0.005 / 13.78);
    });
  });

  it("low, nominal and high are in order, carbide faster than bi-metal", () => {
    for (const { blades } of groups) {
      for (const row of [blades["bi-metal"], blades.carbide]) {
        if (row === undefined) continue;
        for (const { low, nominal, high } of [row.speed, row.chip]) expect(low < nominal && nominal < high).toBe(true);
      }
      if (blades["bi-metal"] !== undefined) expect(blades.carbide.speed.nominal).toBeGreaterThan(blades["bi-metal"].speed.nominal);
    }
  });

  it("carry their basis, and the duplex and PH row says that it is calibrated", () => {
    for (const { basis, name } of groups) {
      for (const text of [basis.force, basis.hardness, basis.ratio, basis.bands]) expect(text).toMatch(/from memory|derived|judgement|second-hand|common practice/);
      expect(basis.bands.includes("calibrated")).toBe(name === "duplex and PH stainless");
    }
  });
});
