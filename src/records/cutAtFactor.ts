import type { CutRun, PitchedWork } from "../cutting/cut";
import { prepareCut } from "../cutting/prepareCut";
import { runCut } from "../cutting/runCut";
import { nominal } from "../cutting/wayDown";

/**
 * A cut as a function of a further factor on its bite, on the saw as described. Where the gullets bind at neither factor the
 * way down is split at the same depths, so that only the bite changes.
 * @param work section, material, blade, pitch, shop
 * @returns the run at a factor [-]
 * @throws InputError as prepareCut
 * @source the cutting model
 */
export function cutAtFactor(work: PitchedWork): (factor: number) => CutRun {
  const cut = prepareCut(work);
  const fixed = { ...work, pitch: cut.pitch };
  const isFree = (factor: number): boolean => cut.bite * Math.max(1, factor) <= cut.room;
  return (factor) => runCut(isFree(factor) ? { ...cut, bite: cut.bite * factor } : prepareCut(fixed, factor), nominal);
}
