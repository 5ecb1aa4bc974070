import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { barUse } from "../../src/yield/barUse";
import { piecesPerBar } from "../../src/yield/piecesPerBar";
import { law, refused } from "../cost/fixture";

const bar = (stock: number, piece: number, kerf: number, trim = 0, grip = 0) => ({ stock, piece, kerf, trim, grip });

describe("pieces per bar: own check values, exact", () => {
  it.each([
    ["6000 mm, trim 10, grip 60, kerf 1.6, piece 100", bar(6000, 100, 1.6, 10, 60), 58],
    ["6000 mm, kerf 2, piece 998: the last piece is the bar's end", bar(6000, 998, 2), 6],
    ["6000 mm, kerf 2, piece 1000: six would need 6010", bar(6000, 1000, 2), 5],
    [
      "2.03 m, ends 0.05, kerf 0.01, piece 0.10 m: a naive floor gives 17",
      bar(2.03 * 1000, 0.1 * 1000, 0.01 * 1000, 0, 0.05 * 1000),
      18,
    ],
    ["20 ft in twelve pieces of a third of five feet, no kerf", bar(20 * 304.8, (5 / 3) * 304.8, 0), 12],
    ["240 in in sevenths, no kerf", bar(240 * 25.4, (240 / 7) * 25.4, 0), 7],
  ])("%s", (_, it0, pieces) => {
    expect(piecesPerBar(it0)).toBe(pieces);
  });

  it("not one piece is refused by name", () => {
    expect(refused(() => piecesPerBar(bar(1000, 995, 2, 10)))).toMatchObject({ reason: "invalid", parameter: "piece" });
    expect(refused(() => piecesPerBar(bar(100, 10, 2, 60, 60)))).toMatchObject({
      reason: "invalid",
      parameter: "piece",
    });
  });
});

describe("pieces × piece + kerfs + trim + grip", () => {
  /** Lengths as whole steps, exact in BigInt: a thousandth of a millimetre, or a 64th of an inch. */
  const step = fc.constantFrom(0.001, 25.4 / 64);
  const draws = fc.record({
    step,
    stock: fc.integer({ min: 25_000, max: 400_000 }),
    piece: fc.integer({ min: 1, max: 20_000 }),
    kerf: fc.integer({ min: 0, max: 200 }),
    trim: fc.integer({ min: 0, max: 500 }),
    grip: fc.integer({ min: 0, max: 1000 }),
    exact: fc.integer({ min: 1, max: 300 }),
  });
  const need = (
    n: number,
    { piece, kerf, trim, grip }: { piece: number; kerf: number; trim: number; grip: number },
  ): bigint => {
    const kerfs = grip > 0 ? BigInt(n) : BigInt(n - 1);
    return BigInt(n) * BigInt(piece) + kerfs * BigInt(kerf) + BigInt(trim) + BigInt(grip);
  };

  it("never exceeds the bar, and one piece more always would", () => {
    const accepted = law(
      draws,
      101,
      (d) => {
        if (need(1, d) > BigInt(d.stock)) return undefined;
        const n = piecesPerBar(
          bar(d.stock * d.step, d.piece * d.step, d.kerf * d.step, d.trim * d.step, d.grip * d.step),
        );
        return need(n, d) <= BigInt(d.stock) && need(n + 1, d) > BigInt(d.stock);
      },
      1000,
    );
    expect(accepted).toBeGreaterThan(0.9);
  });

  it("of a bar that holds exactly n pieces is n, and of one a step shorter is n − 1", () => {
    const accepted = law(
      draws,
      102,
      (d) => {
        const stock = Number(need(d.exact, d));
        const at = (length: number) =>
          piecesPerBar(bar(length * d.step, d.piece * d.step, d.kerf * d.step, d.trim * d.step, d.grip * d.step));
        return at(stock) === d.exact && (d.exact === 1 || at(stock - 1) === d.exact - 1);
      },
      1000,
    );
    expect(accepted).toBe(1);
  });

  it("with kerfs, trim and remnant add up to the bar", () => {
    law(draws, 103, (d) => {
      if (need(1, d) > BigInt(d.stock)) return undefined;
      const it0 = bar(d.stock * d.step, d.piece * d.step, d.kerf * d.step, d.trim * d.step, d.grip * d.step);
      const n = piecesPerBar(it0);
      const { kerf, remnant } = barUse(it0, n);
      return Math.abs(n * it0.piece + it0.trim + kerf + remnant - it0.stock) < 1e-6 && remnant >= it0.grip - 1e-6;
    });
  });
});
