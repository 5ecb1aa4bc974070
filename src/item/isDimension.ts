import { longUnits } from "../data/itemWords";
import { scheduleWords, shapeWords, tagWords, unitWords } from "../data/sectionWords";
import type { Line } from "./item";

const schedules: ReadonlySet<string> = new Set(["sch", "sched", "schedule", "nps", "dn"]);
const opens: ReadonlySet<string> = new Set([...schedules, "x", "by"]);
const separators: ReadonlySet<string> = new Set(["x", "by"]);

/**
 * Whether a number is surely a dimension of the size: beside an x, or with a unit, a tag (OD, wall) or a schedule.
 * @param line with what is read already [-]
 * @param i which atom, a number [-]
 * @returns true for a dimension [-]
 * @source common practice, no source
 */
export function isDimension({ atoms, roles, units }: Line, i: number): boolean {
  const open = (at: number): string => (roles[at] === "" ? atoms[at]!.text : "");
  if (opens.has(open(i - 1))) return true;
  let next = i + 1;
  while (isMeasure(open(next))) next += 1;
  if (next > i + 1 && !(open(i + 1) === "m" && atoms[i + 1]!.spaced)) return true;
  // 4140 x 6": no bar is 4140 in wide.
  if (separators.has(open(next))) return !(units === "inch" && /^\d{4,5}$/.test(atoms[i]!.text) && atoms[next]!.spaced);
  return scheduleWords.has(open(next)) && /^\d{1,2}$/.test(atoms[i]!.text);
}

/** A unit or a tag; a shape's letter is none: 304 L, 1018 W. */
function isMeasure(word: string): boolean {
  return word === "m" || ((unitWords.has(word) || longUnits.has(word) || tagWords.has(word)) && !shapeWords.has(word));
}
