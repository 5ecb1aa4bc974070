import { describe, expect, it } from "vitest";
import { cutProblem } from "../../src/plan/cutProblem";
import { order } from "./fixture";

describe("the order in whole numbers", () => {
  it("equal lengths are one, longest first; 1/64 in is a whole number of nanometres", () => {
    const { lengths, demand, widths } = cutProblem(
      order(
        [
          [25.796875, 2],
          [30, 1],
          [25.796875, 3],
        ],
        [[100]],
        { kerf: 0.396875 },
      ),
    );
    expect(lengths).toEqual([30_000_000, 25_796_875]);
    expect(demand).toEqual([1, 5]);
    expect(widths).toEqual([30_396_875, 26_193_750]);
  });
  it.each([
    ["with a grip each piece is sawn off", 60, 5930],
    ["without one the last piece may be the bar's end", 0, 5992],
  ])("%s", (_, grip, capacity) => {
    expect(cutProblem(order([[100, 1]], [[6000]], { kerf: 2, trim: 10, grip })).stocks[0]!.capacity).toBe(
      capacity * 1e6,
    );
  });
  it("costs are whole multiples of the grain", () => {
    const { stocks, grain } = cutProblem(
      order(
        [[100, 1]],
        [
          [3000, null, 1.5],
          [6000, null, 2.7],
        ],
      ),
    );
    expect(stocks.map(({ cost }) => cost)).toEqual([15, 27]);
    expect(grain).toBe(3);
  });
  it.each([
    [
      "lengths",
      order(
        [
          [100, 1],
          [7000, 1],
        ],
        [[6000]],
      ),
    ],
    ["stockCosts", order([[100, 1]], [[6000, null, 3], [3000]])],
    ["lengths", order([[100, 20_001]], [[6000]])],
    [
      "lengths",
      order(
        Array.from({ length: 201 }, (_, i) => [i + 10, 1] as const),
        [[6000]],
      ),
    ],
  ])("refuses by %s", (parameter, input) => {
    expect(() => cutProblem(input)).toThrow(expect.objectContaining({ reason: "invalid", parameter }) as Error);
  });
});
