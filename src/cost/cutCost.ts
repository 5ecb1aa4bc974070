import { InputError } from "../errors";
import type { Shape } from "../section/shape";
import type { Shop } from "../shop/shop";
import { kerfWidth } from "./kerfWidth";
import { cuttingMinutes } from "../time/cuttingMinutes";
import { minutesPerHour } from "../quantities";

export interface CutCostInput {
  readonly section: Shape;
  readonly rate: number;
  readonly hourlyCost: number;
  readonly price: number;
  readonly life: number;
  readonly shop: Shop;
}

/** Bar that the slot turns into chips, less what the chips bring; nothing where the shop names no material price. */
const kerfCost = ({ section, shop }: CutCostInput): number => {
  const { materialPrice, scrapPrice, density } = shop;
  if (materialPrice === undefined) return 0;
  if (density === undefined)
    throw new InputError(
      "invalid",
      "settings",
      "{parameter} give a Material price but no Density: the kerf's mass is not known",
    );
  return section.area * kerfWidth({ section, shop }) * density * (materialPrice - scrapPrice);
};

/**
 * Cost of one cut, a paid hour h = hourly cost / availability, the sum of: cutting h·T/60; handling h·minutes/60; blade wear price·A/life; blade change
 * h·change/60·A/life; break-in h/60·(area/rate)·(1/share − 1)·A/life; kerf A·kerf·density·(material − scrap price).
 * @param input section A [mm²]; rate [mm²/min]; hourlyCost [money/h]; price [money]; life [mm²]; shop
 * @returns cost and its parts [money]
 * @throws InputError "invalid": a material price without a density; a break-in area above the life
 * @source cost per cut as in machining economics; tool-change time × cutting time / life: P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.7
 */
export function cutCost(input: CutCostInput): {
  readonly cost: number;
  readonly cutting: number;
  readonly handling: number;
  readonly bladeWear: number;
  readonly bladeChange: number;
  readonly kerf: number;
  readonly "break-in": number;
} {
  const { section, rate, hourlyCost, price, life, shop } = input;
  if (shop.breakInArea > life)
    throw new InputError("invalid", "life", "{parameter} is less than the Break-in area of the shop block");
  const perMinute = hourlyCost / (minutesPerHour * shop.availability);
  const blades = section.area / life;
  const cutting = perMinute * cuttingMinutes({ section, rate, maximumFeed: shop.maximumFeed });
  const handling = perMinute * shop.handlingMinutes;
  const bladeWear = price * blades;
  const bladeChange = perMinute * shop.changeMinutes * blades;
  const breakIn = perMinute * (shop.breakInArea / rate) * (1 / shop.breakInFeedShare - 1) * blades;
  const kerf = kerfCost(input);
  return {
    cost: cutting + handling + bladeWear + bladeChange + kerf + breakIn,
    cutting,
    handling,
    bladeWear,
    bladeChange,
    kerf,
    "break-in": breakIn,
  };
}
