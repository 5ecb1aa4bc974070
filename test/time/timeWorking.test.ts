import { describe, expect, it } from "vitest";
import { timeWorking } from "../../src/time/timeWorking";
import { shape, shopOf } from "../cost/fixture";

const of = (maximumFeed?: number) =>
  timeWorking
    .steps({ section: shape("rectangle 20x10"), rate: 400, handling: 3, shop: shopOf({ maximumFeed }) })
    .map(({ symbol, formula, value }) => [symbol, formula, value]);

describe("the working of the minutes of a cut", () => {
  it("20 mm x 10 mm = 200 mm² at 400 mm²/min: 0.5 min, and 3 min of handling; one line for the cutting", () => {
    expect(of()).toEqual([
      ["A", "", 200],
      ["rate", "", 400],
      ["Tc", "A / rate", 0.5],
      ["handling", "", 3],
      ["T", "Tc + handling", 3.5],
    ]);
  });

  it("a maximum feed gives the line of the way instead: 10 mm at no more than 5 mm/min are 2 min", () => {
    expect(of(5)).toEqual([
      ["A", "", 200],
      ["rate", "", 400],
      ["", "", 5],
      ["Tc", "Σ travel / min(rate / L, maximum feed)", expect.closeTo(2, 9)],
      ["handling", "", 3],
      ["T", "Tc + handling", expect.closeTo(5, 9)],
    ]);
  });
});
