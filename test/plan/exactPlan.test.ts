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
it("gives up, and says so, where one bar can be filled in too many ways: 9 of 19 lengths beside the longest are 92,378", () => {
  const lengths = Array.from({ length: 20 }, (_, i) => [100 - i / 10, 1] as const);
  // Any ten of them fill a bar: between 985.5 and 995.5 of 1000, and none is shorter than 98.1.
  const search = searchOf(order(lengths, [[1000]]));
  const before = search.bestCost;
  expect(exactPlan(search, search.all, [], 20_000)).toBe(false);
  expect(search.bestCost).toBe(before);
});
