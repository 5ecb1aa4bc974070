import { expect, it } from "vitest";
import { livesOf } from "../../src/records/livesOf";

it("counts breakages as ends for the cost and not for the wear (definition); without reasons all are worn", () => {
  const why = ["worn", "broke", "teeth lost", "still in use", "pulled"] as const;
  const ended = (counts: "cost" | "wear") => livesOf([1, 2, 3, 4, 5], why, counts).map((l) => l.ended);
  expect(ended("cost")).toEqual([true, true, true, false, false]);
  expect(ended("wear")).toEqual([true, false, false, false, false]);
  expect(livesOf([1, 2], undefined, "wear")).toEqual([
    { area: 1, ended: true },
    { area: 2, ended: true },
  ]);
});
