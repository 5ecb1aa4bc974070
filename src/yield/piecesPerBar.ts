import { yieldConstants as k } from "../data/yieldConstants";
import { InputError } from "../errors";
import type { BarCut } from "./barUse";

/**
 * Pieces that one bar gives. With a grip every piece is cut off, n = floor((stock − trim − grip) / (piece + kerf));
 * without one the last piece may be the bar's own end, n = floor((stock − trim + kerf) / (piece + kerf)). A bar that
 * holds exactly n pieces holds n: half a nanometre is added for the rounding of the computer's numbers.
 * @param bar stock, piece, kerf, trim (its kerf in it), grip [mm]
 * @returns n [-]
 * @throws InputError "invalid": not one piece fits
 * @source geometry
 */
export function piecesPerBar({ stock, piece, kerf, trim, grip }: BarCut): number {
  const room = grip > 0 ? stock - trim - grip : stock - trim + kerf;
  const pieces = Math.floor((room + k.lengthSlack.value) / (piece + kerf));
  if (pieces >= 1) return pieces;
  const facts = {
    piece: { number: piece, quantity: "length" as const },
    room: { number: Math.max(0, stock - trim - grip), quantity: "length" as const },
  };
  throw new InputError(
    "invalid",
    "piece",
    "{parameter} of {piece} does not fit: trim and grip leave {room} of the bar",
    facts,
  );
}
