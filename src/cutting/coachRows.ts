import { cuttingConstants as k } from "../data/cuttingConstants";
import { symptomConstants as s } from "../data/symptomConstants";
import { symptomRemedies } from "../data/symptomRemedies";
import { cutSigns, type CutSigns } from "./cutSigns";
import { knownParts } from "./knownParts";
import { likelyCauses } from "./likelyCauses";
import { seeCut, type CutCheckInput } from "./seeCut";
import { signConditions } from "./signConditions";
import { signFacts } from "./signFacts";
import type { Trouble } from "./trouble";

const near = (a: number | undefined, b: number, share: number): boolean =>
  a === undefined || Math.abs(a / b - 1) <= share;

/** What is set already: a sentence that says to set it is left out of a remedy. */
const isSet = (signs: CutSigns): Readonly<Record<string, boolean>> => ({
  best: signs.best === undefined || signs.best.text === signs.pitch.text,
  bandSpeedToSet: near(signs.bandSpeedToSet, signs.bandSpeed, s.sameSpeed.value),
  feedToSet: near(signs.feedToSet, signs.section.profile().height / signs.minutes, s.sameFeed.value),
  breakInFeed: signs.feedToSet === undefined,
  times: Number.isNaN(signs.factor),
});

/** The sentences of a remedy that change something. */
function remedyOf(text: string, signs: CutSigns): string {
  const set = isSet(signs);
  const left = text
    .split(/(?<=\.) /)
    .filter((sentence) => ![...sentence.matchAll(/\{(\w+)\}/g)].some(([, fact]) => set[fact!] === true));
  return left.length === 0 ? "The setting is right already." : left.join(" ");
}

/**
 * The causes of a symptom in full, for the pane: each with what raised it, the check, the reason and the remedy.
 * @param input a cut that runs; symptom
 * @returns one row a cause, likeliest first [text]
 * @throws InputError "invalid": an area alone
 * @source data/symptoms, data/symptomRemedies: common practice, no source
 */
export function coachRows(input: CutCheckInput & { readonly symptom: Trouble }) {
  const { symptom, shop } = input;
  const signs = cutSigns({ ...input, trouble: symptom }, seeCut(input).known);
  const feed = {
    number: (signs.feedToSet ?? NaN) * shop.breakInFeedShare,
    quantity: "feed" as const,
    digits: k.saidDigits.value,
  };
  const facts = { ...signFacts(signs), breakInFeed: feed };
  const [, , ...texts] = symptomRemedies[symptom.symptom.name]!;
  const full = new Map(
    texts.map((text) => {
      const [key, reason, remedy] = text.split("|") as [string, string, string];
      return [key, { reason, remedy }];
    }),
  );
  return likelyCauses(signs).causes.map(({ key, cause, raised, check }) => ({
    cause: cause,
    raised: knownParts([...new Set(raised.map((c) => signConditions[c]![1]))].join("; "), facts),
    check: knownParts(`${check.state}: ${check.text}`, facts),
    reason: full.get(key)!.reason,
    remedy: knownParts(remedyOf(full.get(key)!.remedy, signs), facts),
  }));
}
