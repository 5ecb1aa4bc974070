import { expect, it } from "vitest";
import { knownParts } from "../../src/cutting/knownParts";
import { said } from "./phrases";

it("a part in brackets is said where all its facts are known, and left out where one is not", () => {
  const facts = { a: "1" };
  expect(said(knownParts("Read it[: now {a}]. Then {a}[ to {b}].", facts))).toBe("Read it: now 1. Then 1.");
});
