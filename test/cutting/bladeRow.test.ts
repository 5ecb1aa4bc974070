import { expect, it } from "vitest";
import { bladeRow } from "../../src/cutting/bladeRow";
import { findMaterial } from "../../src/material/findMaterial";

it("gives the group's row of a class of blade, or says why there is none", () => {
  const { group, row } = bladeRow(findMaterial("304", []), "carbide");
  expect([group.name, row.speed.nominal, row.chip.nominal]).toEqual(["austenitic stainless", 75_000, 0.008]);
  expect(() => bladeRow(findMaterial("tantalum", []), "carbide")).toThrow(/No cutting data/);
  expect(() => bladeRow(findMaterial("ihcp-1045", []), "bi-metal")).toThrow(/too hard for bi-metal/);
});
