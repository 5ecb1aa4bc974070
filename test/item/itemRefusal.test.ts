import { expect, it } from "vitest";
import { itemRefusal } from "../../src/item/itemRefusal";

it("is a refusal of the item: nothing found (definition)", () => {
  expect(itemRefusal("no {what}", { what: "length" })).toMatchObject({
    reason: "none",
    parameter: "item",
    problem: "no {what}",
    facts: { what: "length" },
  });
});
