import { expect, it } from "vitest";
import { nearestRows } from "../../src/size/nearestRows";

it.each([
  ["W", [12, 51], ["12x50", "12x53", "12x45"]],
  ["W", [310, 75], ["310x74", "310x79", "310x67"]],
  ["UPN", [170], ["180", "160", "200"]],
  ["W", [12], ["12x336", "12x305", "12x279"]],
  ["nothing", [1], []],
])("%s %j: %j (definition)", (name, numbers, keys) => {
  expect(nearestRows(name, numbers)).toEqual(keys);
});
