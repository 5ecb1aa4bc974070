import type { Text } from "../phrase";
import { cutSigns, type SeenCut, type TroubledCut } from "./cutSigns";
import { knownParts } from "./knownParts";
import { likelyCauses, type LikelyCauses } from "./likelyCauses";
import { signConditions } from "./signConditions";
import { signFacts } from "./signFacts";

const leads: Readonly<Record<LikelyCauses["lead"], string>> = {
  "most likely": "Most likely the first:",
  close: "Likely, check the first two:",
  "usual order": "The numbers of this cut show nothing out of the way; in the usual order:",
};

const handsOff = "Stop, isolate and lock out before touching the band; chips with a brush or hook, never by hand.";

/**
 * What a cell says of a symptom: the stop line first, then at most four causes, each with the number of this cut that raised
 * it and the check that tells it from the others, then the numbers that would place it better, then hands off.
 * @param work a cut that runs, with what is wrong with it
 * @param seen what CUTCHECK has seen of it
 * @returns sentences [text] with their facts
 * @source data/symptoms: common practice, no source
 */
export function coachText(work: TroubledCut, seen: SeenCut): Text {
  const signs = cutSigns(work, seen);
  const { lead, causes, missing } = likelyCauses(signs);
  const facts = signFacts(signs);
  const lines = causes.map(({ cause, raised, check }, i) => {
    const why = raised.map((condition) => signConditions[condition]![1]);
    const because = why.length === 0 ? "" : ` (${[...new Set(why)].join("; ")})`;
    return knownParts(`${i + 1}. ${cause}${because}. Check, ${check.state}: ${check.text}`, facts);
  });
  const more = missing.length === 0 ? "" : `Give ${missing.join(", ")} to place this better.`;
  return [work.trouble.symptom.stop, leads[lead], ...lines, more, handsOff];
}
