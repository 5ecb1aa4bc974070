import { expect, it } from "vitest";
import { builtInMaterials } from "../../src/material/builtInMaterials";
import { compactDesignation } from "../../src/material/compactDesignation";
import { materialIndex } from "../../src/material/materialIndex";

it("holds every designation, key and name of every row", () => {
  for (const material of builtInMaterials()) {
    for (const text of [
      material.key,
      material.grade,
      material.name,
      ...material.designations.map((designation) => designation.text),
    ]) {
      expect([
        text,
        materialIndex()
          .get(compactDesignation(text))
          ?.some((entry) => entry.material.grade === material.grade),
      ]).toEqual([text, true]);
    }
  }
});

/** ISO 3506, BS 1400, BS 2874, AMS-T-9046, DIN 1629 and GOST 1050 against the table's own; and family words that need a number. */
const honest =
  "1050 660 A4 AB2 ALLOY25 AMPCO C101 C103 C22 CDS CP1 CP2 CP3 CP4 ELEKTRON HARDOX HASTELLOY HAYNES INCOLOY INCONEL MARAGING NIMONIC NITRONIC PB1 ST35 ST45 STELLITE".split(
    " ",
  );

it("two grades share a designation only where it honestly means both", () => {
  const shared = [...materialIndex()].filter(([, entries]) => {
    const best = entries.filter((entry) => !entry.designation.near || entries.every((other) => other.designation.near));
    return new Set(best.map((entry) => entry.material.grade)).size > 1;
  });
  expect(shared.map(([form]) => form).sort()).toEqual(honest);
});

it("has no bare number of one or two digits, which is a size", () => {
  expect([...materialIndex().keys()].filter((form) => /^\d{1,2}$/.test(form))).toEqual([]);
});
