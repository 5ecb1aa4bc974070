import { expect, it } from "vitest";
import { refuseLine } from "../../src/item/refuseLine";
import { InputError } from "../../src/errors";

it.each(["", "  ", "#N/A", "3/4/2025", "x".repeat(201)])("%s is no line (definition)", (line) => {
  expect(() => {
    refuseLine(line);
  }).toThrow(InputError);
});
it("a line passes (definition)", () => {
  expect(refuseLine("round 3")).toBeUndefined();
  expect(refuseLine("65-45-12")).toBeUndefined();
});
