import type { PitchedWork } from "./cut";
import { cutMinutes } from "./cutMinutes";
import { prepareCut } from "./prepareCut";
import { refusePush } from "./refusePush";
import { solvedOnce } from "./solvedOnce";
import { nominal } from "./wayDown";

/**
 * The nominal rate of a cut, as predictCut gives it, without its low and high, forces and powers.
 * @param work section, material, blade, shop; pitch teeth per inch [1/in]
 * @returns rate [mm²/min]
 * @throws InputError as predictCut
 * @source see predictCut
 */
export function cutRate(work: PitchedWork): { readonly rate: number } {
  return solvedOnce("rate", work, () => {
    const cut = prepareCut(work);
    const run = cutMinutes(cut, nominal);
    refusePush(work, cut, run);
    return { rate: run.rate };
  });
}
