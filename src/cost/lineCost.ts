import { minutesPerHour } from "../quantities";
import { lineMinutes } from "./lineMinutes";
import type { SawWork } from "./sawWork";

/** What an order line takes, and what it costs per unit; times in minutes, sizes in mm and mm². */
export interface LineWork extends SawWork {
  /** Volume of bar turned into chips, and of ends lost [mm³]. */
  readonly kerfVolume: number;
  readonly endsVolume: number;
  /** What a volume of bar costs, less its scrap price [money/mm³]. */
  readonly materialValue: number;
  /** Material of the pieces, where it is charged [money]. */
  readonly materialCost: number;
  /** Of the saw and of the operator's share [money/h]. */
  readonly hourlyCost: number;
  /** Share of the paid time that the saw can run [-]. */
  readonly availability: number;
}

export interface LineCost {
  readonly cost: number;
  readonly minutes: number;
  readonly time: number;
  readonly blade: number;
  readonly kerf: number;
  readonly ends: number;
  readonly setUp: number;
  readonly material: number;
}

/**
 * Cost of an order line by what drives it: order (set-up), bar load (loads·load minutes), cut (cycles·(cut + handling
 * minutes)), area (price·area/life; change and break-in minutes·area/life), bar lost (volume·value), and the material of the pieces where it is charged. A minute costs
 * hourly cost / (60·availability).
 * @param work counts [-], minutes [min], area and life [mm²], price [money], volumes [mm³], hourlyCost [money/h]
 * @returns cost and its parts time, blade, kerf, ends, setUp, material [money]; minutes of the saw, set-up included [min]
 * @source common practice; change minutes·area/life: P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.7
 */
export function lineCost(work: LineWork): LineCost {
  const perMinute = work.hourlyCost / (minutesPerHour * work.availability);
  const { sawing, blades } = lineMinutes(work);
  const time = perMinute * sawing;
  const setUp = perMinute * work.setupMinutes;
  const blade = work.price * blades;
  const kerf = work.kerfVolume * work.materialValue;
  const ends = work.endsVolume * work.materialValue;
  return {
    cost: time + blade + kerf + ends + setUp + work.materialCost,
    minutes: sawing + work.setupMinutes,
    time,
    blade,
    kerf,
    ends,
    setUp,
    material: work.materialCost,
  };
}
