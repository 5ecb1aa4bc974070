import { expect, it } from "vitest";
import { itemOf } from "../../src/item/itemOf";
import { itemRefusal } from "../../src/item/itemRefusal";
import { findMaterial } from "../../src/material/findMaterial";
import { readSection } from "../../src/section/readSection";

it("texts of size and material stand beside them; a refusal stands for both (definition)", () => {
  const section = readSection("round 3", "inch");
  const none = itemRefusal("none");
  const rest = { length: none, quantity: 2, unread: "", notes: [] };
  expect(itemOf({ section, grade: findMaterial("304", []), ...rest })).toMatchObject({
    size: "round 3 in",
    material: findMaterial("304", []).name,
    quantity: 2,
  });
  expect(itemOf({ section: none, grade: none, ...rest })).toMatchObject({ size: none, material: none });
});
