import { expect, it } from "vitest";
import { cautionsOf } from "../../src/cutting/cautionsOf";
import { findMaterial } from "../../src/material/findMaterial";

it("puts the material's hazards before the usual cautions, and defers to manual, codes and people", () => {
  for (const [grade, hazard] of [
    ["AZ31B", /burn/],
    ["C17200", /beryllium/],
    ["12L14", /lead/],
    ["ti-2", /ignite/],
  ] as const)
    expect(cautionsOf(findMaterial(grade, []))).toMatch(hazard);
  const plain = cautionsOf(findMaterial("A36", []));
  for (const words of [
    /Guards shut/,
    /lock out/,
    /off when the saw runs/,
    /machine's manual, local codes and a qualified person/,
  ])
    expect(plain).toMatch(words);
});
