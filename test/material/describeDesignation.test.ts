import { expect, it } from "vitest";
import { builtInMaterials } from "../../src/material/builtInMaterials";
import { describeDesignation } from "../../src/material/describeDesignation";
import { findMaterial } from "../../src/material/findMaterial";
import type { DesignationKind } from "../../src/material/material";

const material = findMaterial("304", []);

it.each<[DesignationKind, string, string]>([
  ["UNS", "S30400", "UNS S30400"],
  ["W.-Nr.", "1.4301", "W.-Nr. 1.4301"],
  ["JIS", "SUS304", "JIS SUS304"],
  ["AISI, SAE or ASTM", "AISI 304", "AISI 304"],
  ["EN number", "EN AW-6061", "EN AW-6061"],
  ["trade name", "of a maker", "UNS S30400"],
  ["name", "304", "304 austenitic stainless"],
])("%s %s is written %s", (kind, text, words) => {
  expect(describeDesignation({ material, designation: { kind, text, near: false } })).toBe(words);
});

it("a trade name is written as the UNS number of its material, a letter and five digits (ASTM E527), or by its name", () => {
  for (const each of builtInMaterials()) {
    const words = describeDesignation({ material: each, designation: { kind: "trade name", text: "X", near: false } });
    if (words.startsWith("UNS ")) expect(words).toMatch(/^UNS [A-Z]\d{5}$/);
    else expect(words).toBe(each.name);
  }
});
