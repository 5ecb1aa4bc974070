import { expect, it } from "vitest";
import { improvePlan } from "../../src/plan/improvePlan";
import { planCost } from "../../src/plan/planSearch";
import { random, randomOrder } from "./fixture";
import { searchOf } from "./search";

it("never worse, and better than first fit on most of ten orders (invented)", () => {
  const next = random(9);
  let better = 0;
  for (let run = 0; run < 10; run += 1) {
    const search = searchOf(randomOrder(next, 6, [3000, 6000]));
    const before = search.bestCost;
    improvePlan(search);
    expect(search.bestCost).toBeLessThanOrEqual(before);
    expect(planCost(search.best!)).toBe(search.bestCost);
    better += search.bestCost < before ? 1 : 0;
  }
  expect(better).toBeGreaterThan(5);
});
