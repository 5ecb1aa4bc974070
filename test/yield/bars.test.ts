import { describe, expect, it } from "vitest";
import { bars } from "../../src/yield/bars";
import { refused } from "../cost/fixture";

const bar = { stock: 6000, piece: 100, kerf: 1.6, trim: 10, grip: 60 };

describe("bars to pull: own check values, exact", () => {
  it("120 pieces, 58 a bar: 3 bars; the last gives 4 and leaves 5583.6 mm; yield 2/3", () => {
    expect(bars({ ...bar, quantity: 120 })).toEqual({
      bars: 3,
      piecesPerBar: 58,
      remnant: expect.closeTo(6000 - 10 - 4 * 101.6, 9),
      yield: expect.closeTo(2 / 3, 12),
    });
  });

  it("a full last bar leaves what every bar leaves", () => {
    expect(bars({ ...bar, quantity: 116 })).toMatchObject({ bars: 2, remnant: expect.closeTo(97.2, 9) });
    expect(bars({ ...bar, quantity: 117 }).bars).toBe(3);
  });

  it("a piece longer than the bar is refused", () => {
    expect(refused(() => bars({ ...bar, piece: 6000, quantity: 1 }))).toMatchObject({
      reason: "invalid",
      parameter: "piece",
    });
  });
});
