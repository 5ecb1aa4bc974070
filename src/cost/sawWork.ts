import type { BladeClass } from "../blade/bladeClass";
import { InputError } from "../errors";
import type { Material } from "../material/material";
import type { Shape } from "../section/shape";
import type { Shop } from "../shop/shop";
import type { Loads } from "../yield/cutLoads";
import { shopBlade } from "./shopBlade";

/** What an order line takes of the saw and of its blades; times in minutes, areas in mm². */
export interface SawWork {
  /** Cuts of the whole stack, trim cuts included; each takes a full cycle. */
  readonly cycles: number;
  readonly cutMinutes: number;
  readonly handlingMinutes: number;
  readonly loads: number;
  readonly loadMinutes: number;
  readonly setupMinutes: number;
  /** Area that the blade cuts in the line. */
  readonly area: number;
  readonly price: number;
  readonly life: number;
  readonly changeMinutes: number;
  /** Minutes that a new blade loses to break-in. */
  readonly breakInMinutes: number;
}

interface SawWorkInput {
  readonly section: Shape;
  readonly material: Material;
  readonly blade: BladeClass;
  readonly shop: Shop;
}

/**
 * A line's work but for the rate that it is cut at: cuts and a trim cut for each load, area = single cuts·area of one bar,
 * break-in minutes = break-in area/rate·(1/share − 1).
 * @param input section, material, blade, shop
 * @param counts cuts of the stack, cuts through single bars, loads [-]
 * @returns the work at a rate [mm²/min]: counts [-], minutes [min], area and life [mm²], price [money]
 * @throws InputError as shopBlade; "invalid": a break-in area above the life of the blade
 * @source common practice
 */
export function sawWork(
  { section, material, blade, shop }: SawWorkInput,
  { cuts, barCuts, loads }: Pick<Loads, "cuts" | "barCuts" | "loads">,
): (rate: number) => SawWork {
  const { price, life } = shopBlade({ blade, material, shop });
  if (shop.breakInArea > life)
    throw new InputError("invalid", "settings", "{parameter} give a Break-in area above the life of the blade");
  return (rate) => ({
    cycles: cuts + (shop.trim > 0 ? loads : 0),
    cutMinutes: section.area / rate,
    handlingMinutes: shop.handlingMinutes,
    loads,
    loadMinutes: shop.loadMinutes,
    setupMinutes: shop.setupMinutes,
    area: (barCuts * section.area) / section.pieces,
    price,
    life,
    changeMinutes: shop.changeMinutes,
    breakInMinutes: (shop.breakInArea / rate) * (1 / shop.breakInFeedShare - 1),
  });
}
