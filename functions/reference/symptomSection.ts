import { symptomRemedies } from "../../src/data/symptomRemedies";
import { symptoms } from "../../src/data/symptoms";
import { knownParts } from "../../src/cutting/knownParts";
import { printText } from "../kinds/sentence";

/** Where a cut's own numbers go, in words. */
const inWords: Readonly<Record<string, string>> = {
  best: "the pitch that suits",
  bandSpeedToSet: "the band speed to set",
  feedToSet: "the feed to set",
  breakInFeed: "a reduced feed",
  pitch: "the wrong pitch",
  times: "several",
};
const general = (text: string, facts: Readonly<Record<string, string>>): string =>
  printText(knownParts(text, facts), "inch");

/** A symptom with its causes in the order of the table: cause, check, reason, remedy. */
export interface SymptomDoc {
  readonly name: string;
  readonly say: string;
  readonly alsoTyped: string;
  readonly stop: string;
  readonly lookFirst: string;
  readonly causes: readonly (readonly [cause: string, check: string, reason: string, remedy: string])[];
}

/** What goes wrong, symptom by symptom, for the help page; without a cut the causes stand in their usual order. */
export const symptomDocs = (): readonly SymptomDoc[] =>
  symptoms().map(({ name, alsoTyped, stop, causes }) => {
    const [say, lookFirst, ...texts] = symptomRemedies[name]!;
    return {
      name,
      say,
      alsoTyped: alsoTyped.join(", "),
      stop,
      lookFirst,
      causes: causes.map(({ cause, check }, i) => {
        const [, reason, remedy] = texts[i]!.split("|") as [string, string, string];
        return [cause, general(`${check.state}: ${check.text}`, {}), reason, general(remedy, inWords)];
      }),
    };
  });

/** The heads of a symptom's table. */
export const symptomHeads = ["cause", "check", "reason", "remedy"];
/** What stands before the symptoms. */
export const symptomIntro =
  "What CUTCHECK's symptom may be, and what is behind the causes that it names. The cell puts them in the order of the cut's own numbers; here they stand in their table's order. Common practice, no source, but for the facts listed in docs/sources.md. Stop, isolate and lock out before touching the band; gloves for a standing band, none near a running one.";
