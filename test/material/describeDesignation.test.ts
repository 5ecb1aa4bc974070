import { expect, it } from "vitest";
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
