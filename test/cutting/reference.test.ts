import { describe, expect, it } from "vitest";
import { limitNames } from "../../src/cutting/cut";
import { inch2, predict, referenceRows } from "./fixture";

describe("a second program of docs/method.md (model output, not validation): 63 cuts", () => {
  it("are all there", () => expect(referenceRows).toHaveLength(63));
  it.each(
    referenceRows.map(
      (row) => [row.section, row.material, row.blade, JSON.stringify(row.saw), row.typed, row] as const,
    ),
  )("%s, %s, %s, %s %s", (_s, _m, _b, _w, _t, row) => {
    const got = predict(row.section, row.material, row.blade, row.saw, row.typed === "" ? undefined : row.typed);
    expect(got.pitch.text).toBe(row.pitch);
    expect((got.cut.profile.meanWidth / got.pitch.mean).toFixed(2)).toBe(row.teeth);
    for (const [value, printed] of [
      [got.rate / inch2, row.rate],
      [got.rateLow / inch2, row.low],
      [got.rateHigh / inch2, row.high],
      [got.run.speed / 304.8, row.speed],
      [got.run.minutes, row.minutes],
    ] as const)
      expect(Math.abs(value / printed - 1)).toBeLessThanOrEqual(5e-3);
    // The chip of the rows is the mean over the area; ours is known before the maximum feed only.
    if (row.saw.maximumFeed === undefined)
      expect(Math.abs((got.run.pushedChip * 1000) / row.chip - 1)).toBeLessThanOrEqual(5e-3);
    const { shares } = got.run;
    const first = [...limitNames].sort((a, b) => shares[b] - shares[a])[0]!;
    expect(first).toBe(row.limit);
    expect(Math.abs(shares[first] * 100 - row.share)).toBeLessThanOrEqual(2);
  });
});
