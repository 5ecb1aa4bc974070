import { expect, it } from "vitest";
import { Chance } from "../../src/statistics/chance";

it("gives the sequence printed in Numerical Recipes in C, 2nd ed., 7.1 (from memory), which begins at 0", () => {
  const chance = new Chance(0);
  const printed = ["3C6EF35F", "47502932", "D1CCF6E9", "AAF95334", "6252E503", "9F2EC686", "57FE6C2D", "A3D95FA8"];
  for (const state of printed) expect((chance.next() * 2 ** 32).toString(16).toUpperCase()).toBe(state);
});

it("does not come back to where it began within a million numbers (its period is 2³²: Hull and Dobell, 1962)", () => {
  const chance = new Chance(12_345);
  const first = chance.next();
  let again = 0;
  for (let i = 0; i < 1_000_000; i += 1) if (chance.next() === first) again += 1;
  expect(again).toBe(0);
});
