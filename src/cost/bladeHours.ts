import type { Blade } from "./blade";
import { minutesPerHour } from "../quantities";

/**
 * Saw hours that one unit of area takes, H = 1/(60·rate) + change/(60·life): cutting and changing the blade.
 * @param input blade life [area], rate [area/min]; change [min]
 * @returns H [h/area]
 * @source tool-change time × cutting time / life: P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.7
 */
export function bladeHours({
  blade,
  change,
}: {
  readonly blade: Pick<Blade, "life" | "rate">;
  readonly change: number;
}): number {
  return 1 / (minutesPerHour * blade.rate) + change / (minutesPerHour * blade.life);
}
