import { expect, it } from "vitest";
import { cutPattern } from "../../src/plan/cutPattern";
import { gatherRemnants } from "../../src/plan/gatherRemnants";
import { planCost } from "../../src/plan/planSearch";
import { order } from "./fixture";
import { searchOf } from "./search";

it("what is left of two bars becomes one remnant worth keeping; as many bars as before (by hand)", () => {
  // 60 + 60 and 60 + 50 of 200 leave 80 and 90, both below 100; 60 + 60 + 60 and 50 leave 20 and 150.
  const search = searchOf(
    order(
      [
        [60, 3],
        [50, 1],
      ],
      [[200]],
      { usefulRemnant: 100 },
    ),
  );
  const bar = (...cuts: readonly (readonly [number, number])[]) => cutPattern(search.problem, 0, cuts);
  search.best = [
    [bar([0, 2]), 1],
    [bar([0, 1], [1, 1]), 1],
  ];
  const gathered = gatherRemnants(search);
  expect(planCost(gathered)).toBe(2);
  expect(gathered.map(([{ left }]) => left / 1e6).sort((p, q) => p - q)).toEqual([20, 150]);
});
it("nothing to gather: the plan as it is", () => {
  const search = searchOf(order([[50, 2]], [[200]]));
  expect(gatherRemnants(search)).toBe(search.best);
});
