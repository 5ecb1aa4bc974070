import { expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { attemptField } from "../../src/item/attemptField";

it("gives the value, or a reader's refusal as that of a field; anything else is a bug and surfaces (definition)", () => {
  expect(attemptField(() => 3)).toBe(3);
  const refusal = attemptField(() => {
    throw new InputError("invalid", "section", "{a}", { a: "b" });
  });
  expect(refusal).toMatchObject({ reason: "none", parameter: "item", problem: "{a}", facts: { a: "b" } });
  expect(() => attemptField(() => [][0]!["x"])).toThrow(TypeError);
});
