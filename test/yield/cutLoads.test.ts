import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutLoads } from "../../src/yield/cutLoads";
import { piecesPerBar } from "../../src/yield/piecesPerBar";
import { bars } from "../../src/yield/bars";
import { law } from "../cost/fixture";

const bar = { stock: 6000, piece: 200, kerf: 2, trim: 10, grip: 60 };

describe("pieces, cuts, bars and loads", () => {
  it("100 pieces from a stack of 3 × 4 are 9 cuts, the last part filled: 12 bars, 4 of them cut nine times, 8 eight times (by hand)", () => {
    const loads = cutLoads({ bar, quantity: 100, perCut: 12, usefulRemnant: undefined });
    expect(loads).toMatchObject({ loads: 1, bars: 12, cuts: 9, barCuts: 4 * 9 + 8 * 8 + 12 });
    expect(loads.kerf).toBeCloseTo(100 * 2, 9);
    expect(loads.remnant).toBeCloseTo(6000 - 10 - 9 * 202, 9);
    expect(loads.ends).toBeCloseTo(12 * 10 + 4 * (5990 - 9 * 202) + 8 * (5990 - 8 * 202), 9);
  });

  it("13 pieces from a stack of 12 need 7 bars, not 13 (by hand)", () => {
    expect(cutLoads({ bar, quantity: 13, perCut: 12, usefulRemnant: undefined })).toMatchObject({
      loads: 1,
      bars: 7,
      cuts: 2,
      barCuts: 13 + 7,
    });
  });

  it("a second load begins where the bars are used up: 29 a bar, 12 bars, 348 pieces a load (by hand)", () => {
    expect(piecesPerBar(bar)).toBe(29);
    expect(cutLoads({ bar, quantity: 348, perCut: 12, usefulRemnant: undefined })).toMatchObject({
      loads: 1,
      bars: 12,
      cuts: 29,
    });
    expect(cutLoads({ bar, quantity: 349, perCut: 12, usefulRemnant: undefined })).toMatchObject({
      loads: 2,
      bars: 13,
      cuts: 30,
    });
  });

  it("a remnant that is long enough goes back to stock and is not lost", () => {
    const one = { bar, quantity: 1, perCut: 1 };
    expect(cutLoads({ ...one, usefulRemnant: undefined }).ends).toBeCloseTo(10 + 5788, 9);
    expect(cutLoads({ ...one, usefulRemnant: 5788 }).ends).toBe(10);
    expect(cutLoads({ ...one, usefulRemnant: 5789 }).ends).toBeCloseTo(10 + 5788, 9);
  });

  it("a remnant exactly as long as the useful one goes back to stock in inches too: 12 ft less 480 cuts of 0.225 in is 36 in (by hand)", () => {
    const inch = { stock: 144 * 25.4, piece: 0.125 * 25.4, kerf: 0.1 * 25.4, trim: 0, grip: 1 * 25.4 };
    const order = { bar: inch, quantity: 480, perCut: 1 };
    expect(cutLoads({ ...order, usefulRemnant: 36 * 25.4 }).ends).toBe(0);
    expect(cutLoads({ ...order, usefulRemnant: 36.001 * 25.4 }).ends).toBeCloseTo(36 * 25.4, 9);
  });

  it("no trim, no trim cuts; a piece as long as the bar needs no cut", () => {
    expect(
      cutLoads({ bar: { ...bar, trim: 0, grip: 0, piece: 6000 }, quantity: 3, perCut: 1, usefulRemnant: undefined }),
    ).toEqual({ loads: 3, bars: 3, cuts: 0, barCuts: 0, kerf: 0, ends: 0, useful: 0, remnant: 0 });
  });
});

describe("laws", () => {
  const draws = fc.record({
    stock: fc.integer({ min: 2000, max: 12000 }),
    piece: fc.integer({ min: 10, max: 2000 }),
    kerf: fc.integer({ min: 0, max: 5 }),
    trim: fc.integer({ min: 0, max: 30 }),
    grip: fc.integer({ min: 0, max: 150 }),
    quantity: fc.integer({ min: 1, max: 3000 }),
    perCut: fc.integer({ min: 1, max: 24 }),
  });

  it("bars hold all pieces, and pieces, kerf, trim and remnants add up to them; one bar in the stack gives what BARS gives", () => {
    const accepted = law(draws, 111, ({ quantity, perCut, ...sizes }) => {
      if (sizes.piece + sizes.kerf + sizes.trim + sizes.grip > sizes.stock) return undefined;
      const got = cutLoads({ bar: sizes, quantity, perCut, usefulRemnant: undefined });
      const single = cutLoads({ bar: sizes, quantity, perCut: 1, usefulRemnant: undefined });
      const pulled = bars({ ...sizes, quantity });
      const holds =
        got.bars * piecesPerBar(sizes) >= quantity &&
        got.cuts <= Math.ceil(quantity / perCut) &&
        got.bars <= perCut * got.loads;
      const adds = Math.abs(got.bars * sizes.stock - quantity * sizes.piece - got.kerf - got.ends) < 1e-6;
      return holds && adds && single.bars === pulled.bars && single.remnant === pulled.remnant;
    });
    expect(accepted).toBeGreaterThan(0.9);
  });
});
