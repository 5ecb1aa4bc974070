import type { Pitch } from "./pitch";
import { nominalCut } from "./nominalCut";
import type { CutWork } from "./prepareCut";

/**
 * Predicted removal rate of a cut, nominal: area / minutes of the cut taken down its way.
 * @param input section; material; blade class; pitch [1/in] or undefined; shop
 * @returns rate [mm²/min]
 * @throws InputError as nominalCut
 * @source data/groups, data/cuttingConstants
 */
export function cutRate(input: CutWork & { readonly pitch: Pitch | undefined }): number {
  return nominalCut(input).run.rate;
}
