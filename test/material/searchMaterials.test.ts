import { describe, expect, it } from "vitest";
import { builtInMaterials } from "../../src/material/builtInMaterials";
import { searchMaterials } from "../../src/material/searchMaterials";

const keys = (query: string, limit = 10): string[] => searchMaterials(query, limit).map(({ material }) => material.key);
const first = (query: string) => searchMaterials(query, 1)[0];

describe("searchMaterials (ranking: judgement)", () => {
  it.each([
    ["304", "304", "AISI 304"],
    ["S174", "17-4ph-a", "UNS S17400"],
    ["17-4P", "17-4ph-a", "17-4PH type stainless (Type 630)"],
    ["1.43", "303", "W.-Nr. 1.4305"],
    ["mild", "a36", "plain name"],
    ["C93", "c93200", "UNS C93200"],
  ])("%s finds %s by %s", (query, key, matched) => {
    const hits = searchMaterials(query, 5);
    expect(hits.find(({ material }) => material.key === key)?.matched).toBe(matched);
  });

  it("an exact designation is before longer ones, everyday stock before the rest", () => {
    expect(first("316")!.material.key).toBe("316");
    expect(keys("316")).toContain("316l");
    expect(first("1018")!.material.key).toBe("1018");
  });

  it("names by the beginnings of their words, in any order", () => {
    expect(keys("bronze bear")).toContain("c93200");
    expect(keys("pre-hard 4140")[0]).toBe("4140-ht");
    expect(keys("titanium").length).toBeGreaterThan(4);
  });

  it("gives each material once, no more than asked, and nothing for nothing", () => {
    const hits = keys("steel", 500);
    expect(new Set(hits).size).toBe(hits.length);
    expect(keys("1", 7)).toHaveLength(7);
    for (const query of ["", "  ", "-", "x".repeat(1000)]) expect(searchMaterials(query, 10)).toEqual([]);
  });

  it.each(["1.4302", "4141", "S30401", "6062"])("does not guess: %s finds nothing", (query) => {
    expect(keys(query)).toEqual([]);
  });

  it("finds every material by its own name first or among its conditions", () => {
    for (const material of builtInMaterials())
      expect([material.key, keys(material.name, 6).includes(material.key)]).toEqual([material.key, true]);
  });
});

it("a query whose first sign begins no designation finds nothing", () => {
  for (const query of ["Ω1", "Ж1"]) expect(keys(query)).toEqual([]);
});
