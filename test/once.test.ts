import { expect, it } from "vitest";
import { once } from "../src/once";

it("a value is made when first asked for, and only then", () => {
  let made = 0;
  const value = once(() => {
    made += 1;
    return [made];
  });
  expect(made).toBe(0);
  expect(value()).toBe(value());
  expect(made).toBe(1);
});
