import { yieldConstants as k } from "../data/yieldConstants";
import { workingOf } from "../steps";
import type { BarCut } from "./barUse";
import { bars } from "./bars";

const slack = k.lengthSlack.value.toFixed(7);

/** The working of BARS. */
// prettier-ignore
export const barsWorking = workingOf((input: BarCut & { readonly quantity: number }) => {
  const { stock, piece, kerf, trim, grip, quantity } = input;
  const result = bars(input);
  const last = quantity - (result.bars - 1) * result.piecesPerBar;
  const left = Math.max(0, stock - trim - last * piece);
  const used = Math.min(last * kerf, left);
  return {
    stock, piece, quantity, kerf, trim, grip, ...result, last, left, used,
    cutOff: grip > 0 ? stock - trim - grip : undefined,
    ownEnd: grip > 0 ? undefined : stock - trim + kerf,
  };
}, [
  ["stock", "stock", "length of the bars", "", "length", "yours, else the shop block's"],
  ["piece", "piece", "length of a piece", "", "length", "yours"],
  ["quantity", "quantity", "pieces wanted", "", "count", "yours"],
  ["kerf", "kerf", "bar that one cut turns into chips", "", "length", "yours, else the shop block's"],
  ["trim", "trim", "squared off each bar", "", "length", "yours, else the shop block's"],
  ["grip", "grip", "end that the vice must keep", "", "length", "yours, else the shop block's"],
  ["cutOff", "room", "room for pieces, each cut off", "stock − trim − grip", "length", "geometry"],
  ["ownEnd", "room", "room for pieces, the last the bar's own end", "stock − trim + kerf", "length", "geometry"],
  ["piecesPerBar", "n", "pieces per bar", `floor((room + ${slack}) / (piece + kerf))`, "count", "geometry; half a nanometre for rounding"],
  ["bars", "bars", "bars to pull", "ceil(quantity / n)", "count", "geometry"],
  ["last", "last", "pieces of the last bar", "quantity − (bars − 1) × n", "count", "geometry"],
  ["left", "left", "left of it without its kerfs", "max(0, stock − trim − last × piece)", "length", "geometry"],
  ["used", "used", "its kerfs", "min(last × kerf, left)", "length", "geometry"],
  ["remnant", "remnant", "remnant of the last bar, its grip in it", `left − used > ${slack} ? left − used : 0`, "length", "geometry"],
  ["yield", "yield", "yield", "quantity × piece / (bars × stock)", "share", "definition"],
]);
