import type { BladeClass } from "../blade/bladeClass";
import { predictCut } from "../cutting/predictCut";
import { InputError } from "../errors";
import type { Material } from "../material/material";
import type { Shape } from "../section/shape";
import type { Shop } from "../shop/shop";
import { cutLoads } from "../yield/cutLoads";
import { shopBlade } from "./shopBlade";
import type { MixWay } from "./weighMix";

/** A job of an order book. */
export interface MixWork {
  readonly section: Shape;
  readonly material: Material;
  /** Pieces wanted. */
  readonly quantity: number;
  /** Of a piece [mm]; undefined: bars are not counted. */
  readonly length: number | undefined;
  readonly shop: Shop;
}

/** What the job takes with one class, at the nominal rate; its minutes at the high and the low one. */
export interface JobWay extends MixWay {
  readonly cuts: number;
  readonly pitch: string;
  readonly minutesLow: number;
  readonly minutesHigh: number;
}

interface Counted {
  /** Cuts of the stack; cycles count trim cuts too, bar cuts the bars that each goes through. */
  readonly cuts: number;
  readonly cycles: number;
  readonly barCuts: number;
  readonly loads: number;
}

/** Without a length every cut gives its pieces, and neither bars nor trim cuts are counted. */
function counted({ section, quantity, length, shop }: MixWork, kerf: number): Counted {
  if (length === undefined) {
    const cuts = Math.ceil(quantity / section.pieces);
    return { cuts, cycles: cuts, barCuts: quantity, loads: 0 };
  }
  const { stockLength, trim, grip, usefulRemnant } = shop;
  if (stockLength === undefined)
    throw new InputError("invalid", "settings", '{parameter} give no "{label}"', { label: "Stock length" });
  const slant = section.area / (section.pieces * section.pieceArea);
  const bar = { stock: stockLength, piece: length, kerf: kerf * slant, trim, grip };
  const { cuts, loads, barCuts } = cutLoads({ bar, quantity, perCut: section.pieces, usefulRemnant });
  return { cuts, cycles: cuts + (trim > 0 ? loads : 0), barCuts, loads };
}

/**
 * What a job of an order book takes with one class of blade, as QUOTE counts it: set-up once, loading per bar load, cut and
 * handling per cut, change and break-in per blade. With a length bars and trim cuts are counted.
 * @param work section; material; quantity of pieces; length [mm]; shop
 * @param blade class of blade
 * @returns cuts [-], area and life [mm²], run, bladeMinutes, minutesLow and minutesHigh [min], price [money], pitch [text]
 * @throws InputError as predictCut, cutLoads, shopBlade; "invalid": a break-in area above the life, no Stock length
 * @source see lineCost
 */
export function jobWay(work: MixWork, blade: BladeClass): JobWay {
  const { section, material, shop } = work;
  const { price, life } = shopBlade({ blade, material, shop });
  if (shop.breakInArea > life)
    throw new InputError("invalid", "settings", "{parameter} give a Break-in area above the life of the blade");
  const { rate, rateLow, rateHigh, cut, pitch } = predictCut({ section, material, shop, blade, pitch: undefined });
  const { cuts, cycles, barCuts, loads } = counted(work, cut.saw.band.kerf);
  const area = (barCuts * section.area) / section.pieces;
  const at = (r: number): Pick<MixWay, "run" | "bladeMinutes"> => ({
    run: shop.setupMinutes + loads * shop.loadMinutes + cycles * (section.area / r + shop.handlingMinutes),
    bladeMinutes: shop.changeMinutes + (shop.breakInArea / r) * (1 / shop.breakInFeedShare - 1),
  });
  const minutesAt = (r: number): number => at(r).run + at(r).bladeMinutes * (area / life);
  return {
    cuts,
    area,
    ...at(rate),
    price,
    life,
    pitch: pitch.text,
    minutesLow: minutesAt(rateHigh),
    minutesHigh: minutesAt(rateLow),
  };
}
