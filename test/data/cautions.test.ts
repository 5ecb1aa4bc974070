import { expect, it } from "vitest";
import { generalCautions, hazardTexts } from "../../src/data/cautions";
import { materialRows } from "../../src/data/materials";

it("the general cautions name guards, lock-out, gloves, eyes and ears, chips, and defer to the manual, local codes and a qualified person", () => {
  const text = generalCautions.join(" ").toLowerCase();
  for (const part of ["guards shut", "guides close", "lock out", "gloves", "eye and hearing", "chips", "safety data sheet", "machine's manual", "local codes", "qualified person"]) expect(text).toContain(part);
});

it("every hazard text is used", () => {
  const used = new Set(materialRows.flatMap((row) => row[23].split(" ")).filter((key) => key !== ""));
  expect([...hazardTexts.keys()].sort()).toEqual([...used].sort());
});

it("magnesium is never told to use flood coolant or water; beryllium cites 29 CFR 1910.1024", () => {
  expect(hazardTexts.get("magnesium")).toMatch(/dry or mineral oil.*never water/);
  expect(hazardTexts.get("magnesium")).not.toMatch(/flood/);
  expect(hazardTexts.get("beryllium")).toContain("29 CFR 1910.1024");
});

it("hazards stand where the metal has them", () => {
  const hazards = (key: string): string => materialRows.find((row) => row[0] === key)![23];
  expect(materialRows.filter((row) => row[5] === "magnesium").every((row) => row[23] === "magnesium")).toBe(true);
  expect(materialRows.filter((row) => row[5] === "titanium").every((row) => row[23] === "ignites")).toBe(true);
  expect([hazards("c17200"), hazards("c17510"), hazards("12l14"), hazards("c36000"), hazards("ihcp-1045")]).toEqual(["beryllium", "beryllium", "lead", "lead", "case"]);
  expect(hazards("m42")).toContain("cobalt");
});
