import { cuttingConstants as k } from "../data/cuttingConstants";
import { scenarios } from "./scenarios";
import { InputError } from "../errors";
import { choosePitch } from "./choosePitch";
import type { Pitch } from "../blade/pitch";
import type { CutWork } from "./prepareCut";
import { solveCut, type SolvedCut } from "./solveCut";

/**
 * The nominal cut: pitch (chosen unless given), band speed, and the way down integrated.
 * @param work section, material, blade, shop; pitch teeth per inch [1/in]
 * @returns pitch, cut, run [mm²/min, min] and speed [mm/min]
 * @throws InputError "none": no data, no lawful pitch, saw too fast, band too weak; "invalid": work too big, magnesium flooded
 * @source data/groups, data/cuttingConstants
 */
export function nominalCut(
  work: CutWork & { readonly pitch: Pitch | undefined },
): SolvedCut & { readonly pitch: Pitch } {
  const pitch = work.pitch ?? choosePitch(work);
  const solved = solveCut({ work, pitch, scenario: scenarios.nominal });
  const { run, prepared } = solved;
  const force = run.shares[4]!;
  if (force > 0 && force >= Math.max(...run.shares) && run.meanChip < k.forceChip.value) {
    const facts = {
      band: { number: prepared.band.width, quantity: "size" as const },
      teeth: String(Math.round(work.section.profile().maximumWidth / pitch.mean)),
    };
    throw new InputError(
      "none",
      "",
      "The {band} band cannot be pushed into {teeth} teeth at this span: closer guides, a wider band, or turn the work",
      facts,
    );
  }
  return { ...solved, pitch };
}
