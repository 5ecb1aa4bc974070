import { expect, it } from "vitest";
import { cuttingBasis } from "../../src/material/cuttingBasis";
import { findMaterial } from "../../src/material/findMaterial";

const said = (grade: string) => cuttingBasis(findMaterial(grade, [])).map(({ label, mark }) => `${label}: ${mark}`);

it("the grade's own source before its group's, for each class of blade; nothing without cutting data", () => {
  expect(said("303")).toEqual([
    "bi-metal band speed: derived",
    "bi-metal bite: derived",
    "bite × 1.3 for the grade: derived",
    "carbide band speed: judgement",
    "carbide bite: derived",
  ]);
  expect(said("D2")[0]).toBe("bi-metal band speed: read");
  expect(said("2205")).toHaveLength(4);
  expect(said("hardened steel 60 HRC")).toEqual(["carbide band speed: judgement", "carbide bite: judgement"]);
  expect(said("tantalum")).toEqual([]);
});
