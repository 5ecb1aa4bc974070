import { barUse, type BarCut } from "./barUse";
import { piecesPerBar } from "./piecesPerBar";

/**
 * Bars to pull for an order of one length: ceil(quantity / pieces per bar); yield = quantity·piece / (bars·stock).
 * @param input stock, piece, kerf, trim, grip [mm]; quantity of pieces
 * @returns bars [-], piecesPerBar [-], remnant of the last bar with its grip [mm], yield [-]
 * @throws InputError as piecesPerBar
 * @source geometry
 */
export function bars({ quantity, ...bar }: BarCut & { readonly quantity: number }): {
  readonly bars: number;
  readonly piecesPerBar: number;
  readonly remnant: number;
  readonly yield: number;
} {
  const each = piecesPerBar(bar);
  const count = Math.ceil(quantity / each);
  const { remnant } = barUse(bar, quantity - (count - 1) * each);
  return { bars: count, piecesPerBar: each, remnant, yield: (quantity * bar.piece) / (count * bar.stock) };
}
