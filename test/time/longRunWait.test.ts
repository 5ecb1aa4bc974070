import { describe, expect, it } from "vitest";
import { longRunWait } from "../../src/time/longRunWait";
import { relative } from "../cost/fixture";

/** Erlang's formula: wait / service time of M/M/c (closed form, textbook, from memory). */
function erlangWait(saws: number, share: number): number {
  const load = saws * share;
  const term = (k: number): number => Array.from({ length: k }, (_, i) => load / (i + 1)).reduce((p, x) => p * x, 1);
  const last = term(saws) / (1 - share);
  const idle = Array.from({ length: saws }, (_, k) => term(k)).reduce((s, x) => s + x, 0);
  return last / (idle + last) / (saws * (1 - share));
}

describe("the wait in the long run", () => {
  it("of one saw and jobs as varied as random ones is that of M/M/1, ρ/(1 − ρ) service times (closed form)", () => {
    for (const share of [0.05, 0.3, 0.7, 0.95, 0.999])
      expect(
        relative(longRunWait({ share, saws: 1, mean: 60, variation: 1 }), 60 * (share / (1 - share))),
      ).toBeLessThan(1e-9);
  });

  it.each([
    [0.8, 90],
    [0.9, 202.5],
    [0.95, 427.5],
    [0.98, 1102.5],
  ])("Kingman's (Factory Physics, from memory): 30 min a job, ca² 1, cs² 0.5, share %s: %s min", (share, minutes) => {
    expect(longRunWait({ share, saws: 1, mean: 30, variation: 0.5 })).toBeCloseTo(minutes, 6);
  });

  it.each([2, 3, 5])(
    "%s saws, against Erlang's closed form: within a twenty-fifth of a job everywhere, within 3 %% from a share of 0.9",
    (saws) => {
      for (const share of [0.5, 0.7, 0.8, 0.9, 0.95]) {
        const [ours, exact] = [longRunWait({ share, saws, mean: 1, variation: 1 }), erlangWait(saws, share)];
        expect(Math.abs(ours - exact), `share ${share}: ${ours} ${exact}`).toBeLessThan(0.04);
        if (share >= 0.9) expect(relative(ours, exact), `share ${share}: ${ours} ${exact}`).toBeLessThan(0.03);
      }
    },
  );
});
