import { CELL_INVERTED_INDEX_CACHE } from "@univerjs/engine-formula";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { correctEngine } from "../../../functions/workbook/correctEngine";

interface Cache {
  readonly _cache: Map<string, Map<string, Map<number, Map<unknown, Set<number>>>>>;
  set(unit: string, sheet: string, column: number, value: unknown, row: number, force?: boolean): void;
}
const cache = CELL_INVERTED_INDEX_CACHE as unknown as Cache;

describe("the correction of the engine's index", () => {
  const original = cache.set.bind(cache);

  it("is made", () => {
    correctEngine();
    expect(cache.set).not.toBe(original);
  });

  it("leaves every row in the bucket where the engine's own code puts it (2,000 random runs of writes)", () => {
    const value = fc.oneof(
      fc.constantFrom(null, "", 0, -0, "0", "1", 1, "1.0", "Round 7", "round 7", true, false, "#N/A", "1e3", 1000),
      fc.integer({ min: -3, max: 3 }),
    );
    const buckets = (unit: string) =>
      [...(cache._cache.get(unit)?.get("s")?.get(0) ?? [])]
        .map(([key, rows]) => [key, [...rows].sort((a, b) => a - b)] as const)
        .filter(([, rows]) => rows.length > 0);
    fc.assert(
      fc.property(fc.array(fc.tuple(value, fc.integer({ min: 0, max: 6 })), { maxLength: 25 }), (writes) => {
        for (const unit of ["own", "corrected"]) cache._cache.delete(unit);
        for (const [v, row] of writes) {
          original("own", "s", 0, v, row, true);
          cache.set("corrected", "s", 0, v, row, true);
        }
        expect(new Map(buckets("corrected"))).toEqual(new Map(buckets("own")));
      }),
      { seed: 3, numRuns: 2000 },
    );
  });
});
