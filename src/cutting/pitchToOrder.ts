import { choosePitch } from "./choosePitch";
import type { CutWork } from "./prepareCut";

/**
 * The tooth pitch to order for a cut, as it is written: "3/4", or "4" for a straight one.
 * @param input section; material; blade class; shop
 * @returns teeth per inch [text]
 * @throws InputError "none": no pitch made, or stocked, suits
 * @source see choosePitch
 */
export function pitchToOrder(input: CutWork): string {
  return choosePitch(input).text;
}
