import { describe, expect, it } from "vitest";
import { cutAtFactor } from "../../src/records/cutAtFactor";
import { once } from "../../src/once";
import { fitLog, type SolvedCut } from "../../src/records/fitLog";
import { solveFactor } from "../../src/records/solveFactor";
import { work } from "../cutting/fixture";

const solved = (group: string, run: SolvedCut["run"], minutes: number, row: number): SolvedCut => ({
  cut: { rows: [row], work: { ...work("round 4", "304"), pitch: undefined }, minutes },
  group,
  run,
  factor: solveFactor((f) => run(f).minutes, minutes),
});
const freeOf = once(() => cutAtFactor({ ...work("round 4", "304"), pitch: undefined }));
const free: SolvedCut["run"] = (factor) => freeOf()(factor);
const heldOf = once(() =>
  cutAtFactor({ ...work("round 7", "304", "bi-metal", { maximumFeed: 0.5 }), pitch: undefined }),
);
const held: SolvedCut["run"] = (factor) => heldOf()(factor);

describe("the fit of a log", () => {
  it("leaves out what another limit holds, by the factor of its group and not by its own", () => {
    // At a maximum feed of 0.5 mm/min the rate does not move: 40 % more minutes than the feed allows says nothing of the bite.
    const slow = held(1).minutes;
    const cuts = [0.8, 0.82, 0.78, 0.8].map((f, i) => solved("a", free, free(f).minutes, i));
    const { used, held: out, fit } = fitLog([...cuts, solved("a", held, slow, 5), solved("a", held, slow * 1.4, 6)]);
    expect(used).toHaveLength(4);
    expect(out.map((h) => [h.solved.cut.rows[0], h.by])).toEqual([
      [5, "maximum feed"],
      [6, "maximum feed"],
    ]);
    const alone = fitLog(cuts);
    expect(fit.groups[0]!.middle).toBe(alone.fit.groups[0]!.middle);
  });
  it("names outliers and slips, and is empty without a usable cut", () => {
    const usual = [1, 1.02, 0.98, 1.01, 0.99].map((f, i) => solved("a", free, free(f).minutes, i));
    const { used, outlying, unsolved } = fitLog([
      ...usual,
      solved("a", free, free(3.1).minutes, 8),
      solved("a", free, free(1).minutes * 60, 9),
    ]);
    expect(used).toHaveLength(5);
    expect(outlying.map((o) => [o.solved.cut.rows[0], Math.exp(o.distance)])).toEqual([
      [8, expect.closeTo(3.1 / Math.sqrt(1.01), 5)],
    ]);
    expect(unsolved.map((u) => u.solved.cut.rows[0])).toEqual([9]);
    expect(fitLog([]).groups).toEqual([]);
  });
});
