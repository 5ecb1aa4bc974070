import { expect, it } from "vitest";
import { textAt } from "../../src/item/textAt";
import { lineOf } from "./line";

it("is empty outside the line (definition)", () => {
  const { atoms } = lineOf("RD 3");
  expect([-1, 0, 1, 2].map((i) => textAt(atoms, i))).toEqual(["", "rd", "3", ""]);
});
