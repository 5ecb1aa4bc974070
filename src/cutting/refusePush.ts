import { cuttingConstants as k } from "../data/cuttingConstants";
import { InputError } from "../errors";
import type { Cut, CutRun, PitchedWork } from "./cut";
import { cutMinutes } from "./cutMinutes";
import { prepareCut } from "./prepareCut";
import { nominal } from "./wayDown";

type Pushed = Pick<CutRun, "pushed" | "pushedChip">;

/** The feed force holds over half of the area, and what it leaves there is no chip. */
const cannotPush = ({ pushed, pushedChip }: Pushed): boolean =>
  pushed > k.mostOf.value && pushedChip < k.forceChip.value;

/**
 * Refuses a cut that the band cannot be pushed through, and names the nearest coarser pitch that it can.
 * @param work section, material, blade, shop
 * @param cut the same, prepared
 * @param run share of the area that the feed force holds [-], the area's mean chip before motor and maximum feed [mm]
 * @returns nothing; it only refuses [-]
 * @throws InputError "none": over half of the area is held under the least chip
 * @source judgement: data/cuttingConstants
 */
export function refusePush(work: PitchedWork, cut: Cut, run: Pushed): void {
  if (!cannotPush(run)) return;
  const { pitch } = cut;
  const coarser = [...(work.shop.pitchesStocked ?? cut.plan.made)].sort((a, b) => a.mean - b.mean);
  const works = coarser.find(
    (p) => p.mean > pitch.mean && !cannotPush(cutMinutes(prepareCut({ ...work, pitch: p }), nominal)),
  );
  throw new InputError(
    "none",
    "",
    `The {band} band cannot be pushed into {teeth} teeth${works === undefined ? ", nor into any coarser pitch: closer guides, a wider band, or turn the work" : "; the nearest pitch that it can push is {pitch}"}`,
    {
      band: { number: cut.saw.band.width, quantity: "size" },
      teeth: String(Math.round(cut.profile.meanWidth / pitch.mean)),
      pitch: works?.text ?? "",
    },
  );
}
