import { symptomConstants as s } from "../data/symptomConstants";
import type { Cause, Weight } from "../data/symptoms";
import type { CutSigns } from "./cutSigns";
import { conditionNeeds, signConditions } from "./signConditions";

/** A cause with its score and the conditions of this cut that raised it. */
export interface LikelyCause extends Cause {
  readonly score: number;
  readonly raised: readonly string[];
}

/** The causes in order, how sure the first one is, and the labels of the shop block that would place it better. */
export interface LikelyCauses {
  readonly lead: "most likely" | "close" | "usual order";
  readonly causes: readonly LikelyCause[];
  readonly missing: readonly string[];
}

const holding = (weights: readonly Weight[], signs: CutSigns): readonly Weight[] =>
  weights.filter(([condition]) => signConditions[condition]![0](signs));
const sum = (weights: readonly Weight[]): number => weights.reduce((all, [, by]) => all + by, 0);

function scored(cause: Cause, signs: CutSigns): LikelyCause {
  const raised = holding(cause.raisedBy, signs);
  return {
    ...cause,
    score: cause.base + sum(raised) - sum(holding(cause.loweredBy, signs)),
    raised: raised.map(([condition]) => condition),
  };
}

/** Numbers that the block does not give and that could move a cause. */
function missingOf(causes: readonly Cause[], given: readonly string[]): readonly string[] {
  const needs = causes
    .flatMap((c) => [...c.raisedBy, ...c.loweredBy])
    .flatMap(([condition]) => conditionNeeds[condition] ?? []);
  return [...new Set(needs)].filter(
    (label) =>
      !given.includes(
        label
          .replace(/ (\w)/, (_, first: string) => first.toUpperCase())
          .replace(/^\w/, (first) => first.toLowerCase()),
      ),
  );
}

/**
 * The likely causes of what a sawyer sees, from this cut's own numbers: score = base + Σ weights of the conditions that hold
 * and raise it − Σ of those that lower it; a number that is not known counts 0. By score, then base, then place in the
 * table; at most four, from the third on only scores of 1 and more. Two ahead of the second and raised by a number, the
 * first is most likely; raised by none, the order is only the usual one.
 * @param signs the numbers of the cut
 * @returns causes in order with score [-] and what raised them [text]
 * @source order and weights: judgement, data/symptoms
 */
export function likelyCauses(signs: CutSigns): LikelyCauses {
  const { causes } = signs.trouble.symptom;
  const all = causes.map((cause) => scored(cause, signs)).sort((a, b) => b.score - a.score || b.base - a.base);
  const [first, second] = all as [LikelyCause, LikelyCause | undefined];
  const ahead = first.score - (second?.score ?? 0) >= s.clearLead.value;
  return {
    lead: first.raised.length === 0 ? "usual order" : ahead ? "most likely" : "close",
    causes: all.slice(0, s.mostCauses.value).filter(({ score }, place) => place < 2 || score >= 1),
    missing: missingOf(causes, signs.shop.given),
  };
}
