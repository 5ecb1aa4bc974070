import { costConstants as k } from "../data/costConstants";
import type { Shop } from "../shop/shop";

/**
 * Pieces to saw for the pieces ordered: ceil(quantity / (1 − reject share)) + test pieces.
 * @param quantity of pieces ordered [-]
 * @param shop reject share [-] and test pieces [-]
 * @returns pieces [-]
 * @source definition
 */
export function sawnPieces(quantity: number, { testPieces, rejectShare }: Shop): number {
  return Math.ceil((quantity / (1 - rejectShare)) * (1 - k.roundOff.value)) + testPieces;
}
