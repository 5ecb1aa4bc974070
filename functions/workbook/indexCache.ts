import { CELL_INVERTED_INDEX_CACHE } from "@univerjs/engine-formula";

/**
 * The engine keeps, for each column, which rows hold which value. To set one cell it looks through every distinct value
 * of the column, so that n results cost n² steps: 100,000 did not end in five minutes. Here each row remembers its
 * bucket.
 */
type Buckets = Map<unknown, Set<number>>;

interface IndexCache {
  readonly _cache: Map<string, Map<string, Map<number, Buckets>>>;
  shouldContinueBuildingCache(unit: string, sheet: string, column: number, row: number): boolean;
  set(unit: string, sheet: string, column: number, value: unknown, row: number, force?: boolean): void;
}

/** What the engine files an empty cell under: asked of it, since it is not exported. */
function emptyKey(cache: IndexCache): unknown {
  cache.set("probe", "probe", 0, null, 0, true);
  const [key] = cache._cache.get("probe")!.get("probe")!.get(0)!.keys();
  cache._cache.delete("probe");
  return key;
}

/** As the engine does: null and "" are one, text that is a number is that number, other text counts in lower case. */
const keyOf = (value: unknown, empty: unknown): unknown => {
  if (value === null || value === undefined || value === "") return empty;
  if (typeof value === "number") return value === 0 ? 0 : value;
  if (typeof value !== "string") return value;
  const number = Number(value);
  return value.trim() !== "" && Number.isFinite(number) && String(number) === value
    ? number === 0
      ? 0
      : number
    : value.toLowerCase();
};

const within = <K, V>(map: Map<K, V>, key: K, make: () => V): V => {
  const found = map.get(key) ?? make();
  map.set(key, found);
  return found;
};

/** Makes the engine's index linear. */
export function correctIndexCache(): void {
  const cache = CELL_INVERTED_INDEX_CACHE as unknown as IndexCache;
  const empty = emptyKey(cache);
  const bucketsOf = new WeakMap<Buckets, Map<number, Set<number>>>();
  const bucketOf = (buckets: Buckets): Map<number, Set<number>> => {
    const rows = bucketsOf.get(buckets) ?? new Map<number, Set<number>>();
    bucketsOf.set(buckets, rows);
    return rows;
  };
  cache.set = function set(this: IndexCache, unit, sheet, column, value, row, force = false) {
    if (!force && !this.shouldContinueBuildingCache(unit, sheet, column, row)) return;
    const buckets = within(
      within(
        within(this._cache, unit, () => new Map<string, Map<number, Buckets>>()),
        sheet,
        () => new Map<number, Buckets>(),
      ),
      column,
      () => new Map<unknown, Set<number>>(),
    );
    const rows = bucketOf(buckets);
    if (force) rows.get(row)?.delete(row);
    const bucket = within(buckets, keyOf(value, empty), () => new Set<number>());
    bucket.add(row);
    rows.set(row, bucket);
  };
}
