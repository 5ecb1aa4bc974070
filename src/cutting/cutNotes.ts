import { cuttingConstants as k } from "../data/cuttingConstants";
import type { Phrase } from "../phrase";
import type { CutPrediction } from "./predictCut";

/** Groups whose surface hardens under a rubbing tooth: thin chips are a caution there, elsewhere a note. */
const hardening = (name: string, letter: string): boolean =>
  letter === "S" || name === "austenitic stainless" || name === "duplex and PH stainless";

/**
 * What a careful sawyer would add to a predicted cut: few teeth in the thin part, thin chips, a saw that runs too fast.
 * @param prediction a predicted cut
 * @returns sentences [text] with their facts; none where nothing is to be said
 * @source judgement; fewest teeth: see data/cuttingConstants
 */
export function cutNotes({ cut, run, prepared }: CutPrediction): readonly Phrase[] {
  const { profile, pitch, group } = cut;
  const notes: Phrase[] = [];
  const say = (template: string, facts: Phrase["facts"] = {}) => notes.push({ template, facts });
  const inThin = profile.thinnest / pitch.greatest;
  const teeth = String(Number(inThin.toPrecision(2)));
  if (inThin < 1) say("{teeth} of a tooth in the wall: light feed.", { teeth });
  else if (inThin < k.fewestTeeth.value) say("{teeth} teeth in the thinnest part: light feed.", { teeth });
  else if (inThin < k.fewestSolidTeeth.value) say("Two teeth, not three, in the thinnest part.");
  if (run.thinShare > k.thinChipShare.value) {
    const facts = {
      share: String(Math.round(run.thinShare * 100)),
      chip: { number: Math.min(k.rubbingChip.value, 0.7 * prepared.nominalChip), quantity: "chip" as const },
    };
    say(
      hardening(group.name, group.letter)
        ? "Caution: chips under {chip} over {share} % of the cut area; this material work-hardens when teeth rub."
        : "Thin chips, under {chip}, over {share} % of the cut area.",
      facts,
    );
  }
  if (prepared.tooFast)
    say(
      "The slowest band speed of this saw is above the usual one: the chip is kept thin, expect a shorter blade life.",
    );
  return notes;
}
