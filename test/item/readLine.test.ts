import { expect, it } from "vitest";
import { openLine } from "../../src/item/openLine";
import { readLine } from "../../src/item/readLine";

it.each([
  ["inch", "round 3 in"],
  ["metric", "round 30 mm"],
] as const)("bare numbers are in the unit decided: %s (definition)", (units, size) => {
  const number = units === "inch" ? "3" : "30";
  const item = readLine(openLine(`round ${number}`), { units, from: "given", mixed: false, given: units }, []);
  expect(item.size).toBe(size);
  expect(item.notes.join()).toContain("as given");
});
