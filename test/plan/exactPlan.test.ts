import { expect, it } from "vitest";
import { exactPlan } from "../../src/plan/exactPlan";
import { order } from "./fixture";
import { searchOf } from "./search";

it("every way of a small order: 3 bars where 2.09 would do in parts (Marcotte, from memory)", () => {
  const search = searchOf(
    order(
      [
        [44, 2],
        [33, 3],
        [12, 6],
      ],
      [[132]],
    ),
  );
  expect(exactPlan(search, search.all, [], 20_000)).toBe(true);
  expect(search.bestCost).toBe(3);
});
it("says when it was cut off", () => {
  const search = searchOf(
    order(
      [
        [44, 20],
        [33, 30],
        [12, 60],
        [7, 50],
      ],
      [[132], [100]],
    ),
  );
  expect(exactPlan(search, search.all, [], 3)).toBe(false);
});
