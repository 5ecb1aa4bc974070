import { cuttingConstants as k } from "../data/cuttingConstants";
import type { Phrase } from "../phrase";
import type { Cut, CutWork } from "./cut";
import { meanChip } from "./meanChip";
import type { CutPrediction } from "./predictCut";
import { workHardens } from "./workHardens";

const note = (template: string, facts: Phrase["facts"] = {}): Phrase => ({ template, facts });

/** What stands behind the rate: nothing published, or a factor of the shop outside what is published. */
function rateNotes(cut: Cut, { blade }: CutWork): readonly Phrase[] {
  const { row, rateFactor, group } = cut;
  const notes: Phrase[] = [];
  if (cut.judged)
    notes.push(
      note("No published rate was found for {group} with {blade}: time a cut of your own.", {
        group: group.name,
        blade,
      }),
    );
  if (rateFactor > row.spread || rateFactor < 1 / row.spread)
    notes.push(
      note(
        "Rate factor {factor} is outside the published band: check the log (minutes, sizes, units) before setting this feed.",
        { factor: String(Number(rateFactor.toPrecision(3))) },
      ),
    );
  return notes;
}

/**
 * What a careful sawyer would add to a predicted cut: few teeth in the thin part, thin chips, a saw that runs too fast,
 * a rate that nothing published stands behind.
 * @param prediction a predicted cut
 * @param work section, material, blade, shop
 * @returns sentences [text] with their facts; none where nothing is to be said
 * @source judgement; fewest teeth and thin chip: see data/cuttingConstants
 */
export function cutNotes({ cut, run, pitch }: CutPrediction, work: CutWork): readonly Phrase[] {
  const { profile, group, plan } = cut;
  const notes: Phrase[] = [];
  if (!plan.lawful(pitch)) {
    const teeth = String(Number((profile.thinnest / pitch.mean).toPrecision(2)));
    notes.push(note("{teeth} teeth in the thinnest part: light feed.", { teeth }));
  }
  const chip = meanChip({ rate: run.rate, pitch, speed: run.speed, profile });
  // Where the metal work-hardens a thin chip is a caution, elsewhere a note.
  if (chip < k.thinChip.value) {
    const facts = { chip: { number: chip, quantity: "chip" as const } };
    notes.push(
      workHardens(group)
        ? note("Caution: a thin chip, {chip}; this material work-hardens when teeth rub.", facts)
        : note("A thin chip, {chip}.", facts),
    );
  }
  if (cut.credit < 1)
    notes.push(
      note(
        "The slowest band speed of this saw is above the usual one: the chip is kept thin, expect a shorter blade life.",
      ),
    );
  return [...notes, ...rateNotes(cut, work)];
}
