import type { Blade } from "./blade";
import { bladeHours } from "./bladeHours";

/**
 * Cost of cutting one unit of area with a blade, c = w·H + price/life + kerf with the saw hours H of bladeHours.
 * @param input blade price [money], life [area], rate [area/min], kerf [money/area]; sawHourValue w [money/h]; change [min]
 * @returns c [money/area]
 * @source cost per area as in machining economics; tool-change time × cutting time / life: P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.7
 */
export function bladeCost({
  blade,
  sawHourValue,
  change,
}: {
  readonly blade: Blade;
  readonly sawHourValue: number;
  readonly change: number;
}): number {
  return sawHourValue * bladeHours({ blade, change }) + blade.price / blade.life + (blade.kerf ?? 0);
}
