import type { SeriesRow } from "./seriesRows";

/** The letter of a size, 1 for a. */
const letterOf = (number: number): string => (number > 0 ? "abc".charAt(number - 1) : "");

/** Names of series whose numbers do not simply stand behind them. */
const named: ReadonlyMap<string, (first: number, second: number) => string> = new Map([
  ["AU UB", (depth, mass) => `${depth}UB${mass}`],
  ["AU UC", (depth, mass) => `${depth}UC${mass}`],
  ["AU WB", (depth, mass) => `${depth}WB${mass}`],
  ["AU WC", (depth, mass) => `${depth}WC${mass}`],
  ["AU PFC", (depth) => `${depth}PFC`],
  ["GB I", (size, letter) => `GB I${size}${letterOf(letter)}`],
  ["GB C", (size, letter) => `GB C${size}${letterOf(letter)}`],
  ["GOST I", (size) => `GOST I${size}`],
  ["GOST У", (size, letter) => `GOST ${size}${letter > 0 ? "а" : ""}У`],
  ["GOST П", (size, letter) => `GOST ${size}${letter > 0 ? "а" : ""}П`],
]);

/**
 * The designation of a row of a further standard, as it is read again: 310UC96.8, JIS H 200x100x5.5x8, ISMB 200x25.4.
 * @param row of a table [-]
 * @param mass where the name alone says not which row [kg/m]
 * @returns designation [text]
 * @source the spellings of the standards in sectionSources.ts
 */
export function seriesName({ family, cells }: SeriesRow, mass?: number): string {
  const { name, key } = family;
  const special = named.get(name);
  if (special !== undefined) return special(cells[0]!, cells[1]!);
  const numbers = `${name.replace("AU ", "")} ${cells.slice(0, key).join("x")}`;
  return mass === undefined || key !== 1 ? numbers : `${numbers}x${mass.toFixed(1)}`;
}
