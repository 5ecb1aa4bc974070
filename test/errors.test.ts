import { expect, it } from "vitest";
import { InputError, orRefusal } from "../src/errors";

it("a refusal is an Error in everything but the stack, which nobody reads and which costs more than an answer", () => {
  const limit = Error.stackTraceLimit;
  const refusal = new InputError("none", "size", "{parameter} is {given}", { given: "odd" });
  expect(refusal).toBeInstanceOf(Error);
  expect(refusal).toBeInstanceOf(InputError);
  expect(String(refusal)).toBe("InputError: size: {parameter} is {given}");
  expect(Object.hasOwn(refusal, "stack")).toBe(false);
  expect(Error.stackTraceLimit).toBe(limit);
  expect(new Error("another").stack).toContain("errors.test");
});

it("only a refusal is data; anything else that is thrown goes on", () => {
  const refusal = new InputError("invalid", "", "no");
  expect(
    orRefusal(() => {
      throw refusal;
    }),
  ).toBe(refusal);
  expect(() =>
    orRefusal(() => {
      throw new TypeError("a bug");
    }),
  ).toThrow(TypeError);
});
