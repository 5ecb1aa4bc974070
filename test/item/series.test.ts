import { expect, it } from "vitest";
import { readItem } from "../../src/item/readItem";
import { InputError } from "../../src/errors";

it.each([
  ["IPE A 300 S355 6m", "IPE A 300"],
  ["IPE O 300 S235JR 12 m", "IPE O 300"],
  ["HE 200 B S355 6m", "HEB 200"],
  ["HE 200 A S235 8m", "HEA 200"],
  ["IPE 300 S355 6m", "IPE 300"],
])("%s is %s: the letter of a series is part of the size", (line, size) => {
  const { section } = readItem(line, "metric", []);
  expect(section instanceof InputError ? section.problem : section.text).toBe(size);
});
