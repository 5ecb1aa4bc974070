import { expect, it } from "vitest";
import { itemRow } from "../../src/item/itemRow";
import { readItem } from "../../src/item/readItem";

it("the six results of the worksheet, in their order (definition)", () => {
  const item = readItem("5 pcs 4140 RD 3 x 2 ft urgent", "inch", []);
  const row = itemRow({ description: item });
  expect(Object.keys(row)).toEqual(["size", "material", "length", "quantity", "wordsNotRead", "readAs"]);
  expect({ ...row, length: Math.round(Number(row.length) * 10) }).toEqual({
    size: "round 3 in",
    material: "4140 Cr-Mo steel",
    length: 6096,
    quantity: 5,
    wordsNotRead: "urgent",
    readAs: {
      template:
        "round 3 in · 4140 Cr-Mo steel · {length} · 5 pieces · inches, as given · condition not stated: annealed taken; also in the table: Q&T 28-32 HRC",
      facts: { length: { number: item.length, quantity: "length" } },
    },
  });
});
