import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { builtInMaterials } from "../../src/material/builtInMaterials";
import { matchMaterial } from "../../src/material/matchMaterial";
import { materialData } from "../../src/material/materialData";

const data = (designation: string) => materialData({ material: matchMaterial(designation, []) });

describe("materialData", () => {
  it("304: density as EN 10088-1 prints it (7.9 kg/dm³), group and letter", () => {
    expect(data("304")).toMatchObject({
      name: "304 austenitic stainless",
      group: "austenitic stainless",
      letter: "M",
      condition: "annealed",
      density: 7900e-9,
      machinability: 45,
      machinabilityBasis: "AISI 1112/1212 = 100",
    });
  });

  it("ferritic stainless is P by ISO 513 and M in most shops", () => {
    expect(data("430").letter).toBe("P (in most shops M)");
  });

  it("says near designations as near", () => {
    expect(data("4340").designations).toContain("near W.-Nr. 1.6582");
    expect(data("4140").designations).toContain("W.-Nr. 1.7225");
  });

  it("refuses machinability alone where there is none, and says where there is no cutting data", () => {
    expect(data("TZM").machinability).toBeInstanceOf(InputError);
    expect(data("TZM")).toMatchObject({ machinabilityBasis: "none", group: "none: no cutting data" });
  });

  it("hazards and cautions: beryllium copper, lead, magnesium; plain steel defers to its safety data sheet", () => {
    expect(data("C17200").hazards).toContain("29 CFR 1910.1024");
    expect(data("12L14").hazards).toContain("lead");
    expect(data("AZ31B").hazards).toContain("never water");
    expect(data("1018").hazards).toContain("safety data sheet");
    for (const part of ["Isolate and lock out", "machine's manual", "local codes", "qualified person"])
      expect(data("1018").cautions).toContain(part);
  });

  it("sources and how confidence: marks of the row, credit of the machining cards, calibration of the duplex and PH group", () => {
    expect(data("304").sources).toContain("J. Baehr, CC-BY-3.0");
    expect(data("304").confidence).toContain("density seen");
    expect(data("304").confidence).toContain("hardness from memory");
    expect(data("304").confidence).toContain("bi-metal band speed read");
    expect(data("304").sources).toContain("bi-metal band speed: Machinery's Handbook, 31st ed., p. 1245");
    expect(data("2205").sources).toContain("bi-metal bite: calibrated on a trade figure");
  });

  it("every field of every material is filled", () => {
    for (const material of builtInMaterials()) {
      const { machinability, ...rest } = materialData({ material: { material, matched: material.key, note: "" } });
      for (const [field, value] of Object.entries(rest))
        expect([material.key, field, value === "" || value === undefined || Number.isNaN(value)]).toEqual([
          material.key,
          field,
          false,
        ]);
      expect(machinability instanceof InputError || machinability > 0).toBe(true);
    }
  });
});

it("designations, sources and marks stand apart by their own signs", () => {
  const { designations, sources, confidence } = data("304");
  expect(designations.split("; ")).toContain("W.-Nr. 1.4301");
  expect(sources).toContain("; bi-metal band speed: Machinery's Handbook, 31st ed., p. 1245");
  expect(confidence.split(", ")).toEqual(
    expect.arrayContaining(["density seen in its source", "bi-metal band speed read"]),
  );
  // As many of each as there are values.
  expect(confidence.split(", ").length).toBeGreaterThan(4);
  expect(data("304").readAs).toBe("AISI 304");
});

it("says how the designation was read, and the note behind a colon where there is one", () => {
  const noted = matchMaterial("4140", []);
  expect(noted.note).not.toBe("");
  expect(materialData({ material: noted }).readAs).toBe(`${noted.matched}: ${noted.note}`);
  expect(materialData({ material: { ...noted, note: "" } }).readAs).toBe(noted.matched);
});
