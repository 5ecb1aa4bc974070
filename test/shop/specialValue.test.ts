import { expect, it } from "vitest";
import { findMaterial } from "../../src/material/findMaterial";
import { specialValue } from "../../src/shop/specialValue";

it("of the grade before its group; tool steel means both of its groups, each of them also by its own name", () => {
  const specials = [
    { of: "tool steel", value: 1 },
    { of: "tool steel D M T", value: 2 },
    { of: "d2", value: 3 },
  ];
  const value = (grade: string) => specialValue(specials, findMaterial(grade, []), "carbide")?.value;
  expect(["O1", "M2", "D2", "304"].map(value)).toEqual([1, 2, 3, undefined]);
});
