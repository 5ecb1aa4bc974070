import { expect, it } from "vitest";
import { itemRefusal } from "../../src/item/itemRefusal";
import { readAs } from "../../src/item/readAs";

const none = itemRefusal("none");

it("what was read, and what was assumed (definition)", () => {
  expect(
    readAs({ size: "round 3 in", material: "4140", length: 254, quantity: 1, notes: ["inches, as given"] }),
  ).toEqual({
    template: "round 3 in · 4140 · {length} · 1 piece · inches, as given",
    facts: { length: { number: 254, quantity: "length" } },
  });
  expect(readAs({ size: none, material: none, length: none, quantity: none, notes: [] })).toBe("");
});
