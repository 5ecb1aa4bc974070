import { europeanSeries, americanSeries, metricGrade } from "../data/unitHints";
import { longUnits } from "../data/itemWords";
import { scheduleWords, unitWords } from "../data/sectionWords";
import type { Units } from "../quantities";
import type { OpenLine } from "./openLine";

/** What a line says of its unit. */
export interface LineUnits {
  /** The one unit that is written behind numbers of the line. */
  readonly written: Units | undefined;
  /** Both are written. */
  readonly mixed: boolean;
  /** The one unit in which its words, grade and series are used. */
  readonly hinted: Units | undefined;
}

/**
 * The unit that a line writes, and the unit that its words speak for: a fraction and American series for inches; other languages, European
 * and Asian grades and series for millimetres.
 * @param line with its atoms and languages [-]
 * @returns units; undefined where the line does not say, or says both [text]
 * @source common practice, no source
 */
export function lineUnits({ atoms, languages, other }: OpenLine): LineUnits {
  const written = new Set<Units>(other === undefined ? [] : [other]);
  const hinted = new Set<Units>(languages.size > 0 ? ["metric"] : []);
  atoms.forEach(({ kind, text }, i) => {
    const behind = kind !== "number" ? undefined : atoms[i + 1]?.text;
    const unit = behind === undefined ? undefined : unitWords.get(behind);
    if (unit === "mm" || unit === "cm") written.add("metric");
    else if (unit === "in") written.add("inch");
    else if (unit !== undefined && behind !== undefined && longUnits.has(behind))
      hinted.add(unit === "m" ? "metric" : "inch");
    const hint = hintOf(kind, text);
    if (hint !== undefined) hinted.add(hint);
  });
  return { written: only(written), mixed: written.size > 1, hinted: only(hinted) };
}

const only = (units: ReadonlySet<Units>): Units | undefined => (units.size === 1 ? [...units][0] : undefined);

function hintOf(kind: string, text: string): Units | undefined {
  if (kind === "number") return text.includes("/") ? "inch" : metricGrade.test(text) ? "metric" : undefined;
  if (kind === "code") return metricGrade.test(text) ? "metric" : undefined;
  if (americanSeries.has(text) || scheduleWords.has(text)) return "inch";
  return europeanSeries.has(text) ? "metric" : undefined;
}
