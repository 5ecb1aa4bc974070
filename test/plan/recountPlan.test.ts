import { expect, it } from "vitest";
import { cutPattern, type Plan } from "../../src/plan/cutPattern";
import { cutProblem } from "../../src/plan/cutProblem";
import { recountPlan } from "../../src/plan/recountPlan";
import { order } from "./fixture";

// Two bars of 100, no kerf: 60, 60, 40 and 40 fill both.
const problem = cutProblem(
  order(
    [
      [60, 2],
      [40, 2],
    ],
    [[100, 2]],
  ),
);
const [long, short] = [0, 1];
const bar = (...cuts: readonly (readonly [number, number])[]) => cutPattern(problem, 0, cuts);
const full = bar([long, 1], [short, 1]);

it("a plan that holds is given its cost: two bars (by hand)", () => {
  expect(recountPlan(problem, [[full, 2]], 2)).toBe(2);
});

it.each<readonly [string, Plan, number]>([
  [
    "a bar is overfilled: 60 + 60 in 100",
    [
      [bar([long, 2]), 1],
      [bar([short, 2]), 1],
    ],
    2,
  ],
  [
    "a piece of 40 is missing",
    [
      [full, 1],
      [bar([long, 1]), 1],
    ],
    2,
  ],
  [
    "a piece of 40 is cut too many",
    [
      [full, 1],
      [bar([long, 1], [short, 1]), 1],
      [bar([short, 1]), 1],
    ],
    3,
  ],
  [
    "three bars of the two in stock",
    [
      [full, 1],
      [bar([long, 1]), 1],
      [bar([short, 1]), 1],
    ],
    3,
  ],
  ["it costs more than was found", [[full, 2]], 1],
])("%s: not shown, and the user is asked to report it", (_, plan, most) => {
  expect(() => recountPlan(problem, plan, most)).toThrow(
    expect.objectContaining({
      reason: "none",
      problem: expect.stringContaining("please report it") as string,
    }) as Error,
  );
});
