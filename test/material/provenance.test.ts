import { describe, expect, it } from "vitest";
import { builtInMaterials } from "../../src/material/builtInMaterials";
import { provenance } from "../../src/material/provenance";

describe("provenance", () => {
  it("gives a source and one of the marks in words for every value of every material (the table's own keys)", () => {
    for (const material of builtInMaterials()) {
      const rows = provenance(material);
      expect(
        rows.map((r) => r.label),
        material.key,
      ).toEqual(expect.arrayContaining(["designations", "hardness"]));
      for (const { source, mark } of rows) {
        expect(source.length, material.key).toBeGreaterThan(3);
        expect(["seen in its source", "from memory", "estimated", "the shop's own"]).toContain(mark);
      }
    }
  });

  it("leaves out a value without a source", () => {
    const material = builtInMaterials()[0]!;
    expect(provenance({ ...material, sources: "----", marks: "", force: undefined })).toEqual([]);
  });
});
