import { longUnits } from "../data/itemWords";
import { scheduleWords, shapeWords, tagWords, unitWords } from "../data/sectionWords";
import type { Line } from "./item";

const schedules: ReadonlySet<string> = new Set(["sch", "sched", "schedule", "nps", "dn"]);
const separators: ReadonlySet<string> = new Set(["x", "by"]);

/**
 * Whether a number is surely a dimension of the size: beside an x, or with a unit, a tag (OD, wall) or a schedule.
 * @param line with what is read already [-]
 * @param i which atom, a number [-]
 * @returns true for a dimension [-]
 * @source common practice, no source
 */
export function isDimension({ atoms, roles }: Line, i: number): boolean {
  const open = (at: number): string => (roles[at] === "" ? atoms[at]!.text : "");
  const before = open(i - 1);
  if (separators.has(before) || schedules.has(before)) return true;
  let next = i + 1;
  // A shape's letter is a unit or a tag only where it stands as one: 304 L, 1018 W.
  const isUnit = (at: number) => (unitWords.has(open(at)) || longUnits.has(open(at)) || tagWords.has(open(at))) && (!shapeWords.has(open(at)) || open(at) === "m");
  if (isUnit(next) && !(open(next) === "m" && atoms[next]!.spaced)) return true;
  while (isUnit(next)) next += 1;
  return separators.has(open(next)) || (scheduleWords.has(open(next)) && /^\d{1,2}$/.test(atoms[i]!.text));
}
