import { europeanSections } from "../data/sectionsEn";
import { americanSections } from "../data/sectionsUs";

/**
 * The three designations of a table nearest to one that is not in it: by the first number, then by the next ones; the table's order decides
 * between equals.
 * @param name of the table, for example W [text]
 * @param numbers of the designation looked for [-]
 * @returns keys such as 12x50, nearest first [text]
 * @source definition
 */
export function nearestRows(name: string, numbers: readonly number[]): readonly string[] {
  // American tables hold a metric designation beside each row; no depth in inches is above 45, none in millimetres below.
  const metric = (numbers[0] ?? 0) > 45 ? 1 : 0;
  const rows = [...americanSections, ...europeanSections]
    .filter((family) => family.name === name)
    .flatMap((family) => family.rows.trim().split("\n"));
  const keys = rows.map((row) => {
    const both = row.slice(0, row.indexOf(",")).split("|");
    return both[metric] ?? both[0] ?? "";
  });
  // Only rows as near in the first number as the third nearest can be among the three.
  const gap = (key: string) => Math.abs(parseFloat(key) - (numbers[0] ?? parseFloat(key)));
  const limit = keys.map(gap).sort((a, b) => a - b)[2] ?? Infinity;
  const near = keys.filter((key) => gap(key) <= limit);
  const gaps = new Map(
    near.map(
      (key) => [key, key.split("x").map((part, i) => Math.abs(Number(part) - (numbers[i] ?? Number(part))))] as const,
    ),
  );
  return near
    .sort((a, b) => gaps.get(a)!.reduce((difference, own, i) => difference || own - (gaps.get(b)![i] ?? 0), 0))
    .slice(0, 3);
}
