import { expect, it } from "vitest";
import { cutPattern } from "../../src/plan/cutPattern";
import { cutProblem } from "../../src/plan/cutProblem";
import { order } from "./fixture";

it("what is filled and left of a bar (by hand): 2 × (60 + 1) + (40 + 1) of 200 − 5", () => {
  const problem = cutProblem(
    order(
      [
        [60, 2],
        [40, 1],
      ],
      [[200]],
      { kerf: 1, trim: 5, grip: 10 },
    ),
  );
  expect(
    cutPattern(problem, 0, [
      [1, 1],
      [0, 2],
    ]),
  ).toMatchObject({ filled: 163e6, left: 32e6, cost: 1, key: "0:0,2,1,1" });
});
