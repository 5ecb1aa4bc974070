import { describe, expect, it } from "vitest";
import { barUse } from "../../src/yield/barUse";

describe("what becomes of a bar (geometry)", () => {
  it("with a grip every piece takes a cut: 6000 − 10 − 58·(100 + 1.6) = 97.2", () => {
    const use = barUse({ stock: 6000, piece: 100, kerf: 1.6, trim: 10, grip: 60 }, 58);
    expect(use).toEqual({ cuts: 58, kerf: expect.closeTo(92.8, 9), remnant: expect.closeTo(97.2, 9) });
  });

  it("a last piece that is the bar's end takes none", () => {
    expect(barUse({ stock: 6000 - 2, piece: 998, kerf: 2, trim: 0, grip: 0 }, 6)).toEqual({
      cuts: 5,
      kerf: 10,
      remnant: 0,
    });
    expect(barUse({ stock: 1000, piece: 1000, kerf: 2, trim: 0, grip: 0 }, 1)).toEqual({
      cuts: 0,
      kerf: 0,
      remnant: 0,
    });
  });

  it("a bar used up leaves nothing, in inches too: 10 pieces of 24 in from 20 ft", () => {
    expect(barUse({ stock: 240 * 25.4, piece: 24 * 25.4, kerf: 0, trim: 0, grip: 0 }, 10).remnant).toBe(0);
  });

  it("a rest thinner than the kerf goes as chips in the last cut", () => {
    expect(barUse({ stock: 5999, piece: 998, kerf: 2, trim: 0, grip: 0 }, 6)).toEqual({
      cuts: 6,
      kerf: 11,
      remnant: 0,
    });
  });
});
