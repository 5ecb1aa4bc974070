import type { SeriesFamily } from "../data/seriesFamily";

/** A row of a table of a further standard. */
export interface SeriesRow {
  readonly family: SeriesFamily;
  /** Empty cells are 0. */
  readonly cells: readonly number[];
}

/**
 * The rows of a table; those without a root radius belong to another standard with the same sizes.
 * @param family the table [-]
 * @param first only rows that begin with this number; all where left out [-]
 * @returns rows in the table's order [mm, kg/m]
 * @source the standard named in the table
 */
export function seriesRows(family: SeriesFamily, first?: number): readonly SeriesRow[] {
  const both = family.source === "jis" || family.source === "ks";
  return family.rows
    .split("\n")
    .filter((line) => line !== "" && (first === undefined || line.startsWith(`${first},`)))
    .map((line) => ({ family, cells: line.split(",").map(Number) }))
    .filter(({ cells }) => !both || cells[family.cells[4]!]! > 0);
}
