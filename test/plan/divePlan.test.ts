import { expect, it } from "vitest";
import { divePlan } from "../../src/plan/divePlan";
import { order } from "./fixture";
import { searchOf } from "./search";

it("a dive finds the least plan of Chvátal's example (Linear Programming, ch. 13, from memory): 453 bars", () => {
  const search = searchOf(
    order(
      [
        [45, 97],
        [36, 610],
        [31, 395],
        [14, 211],
      ],
      [[100]],
    ),
  );
  for (let rank = 0; rank < 12 && !search.isDone; rank += 1) divePlan(search, search.all, [], rank);
  expect([search.bestCost, search.isProven]).toEqual([453, true]);
});
