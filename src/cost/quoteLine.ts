import type { BladeClass } from "../blade/bladeClass";
import { predictCut, type CutPrediction } from "../cutting/predictCut";
import { InputError } from "../errors";
import type { Material } from "../material/material";
import type { Shape } from "../section/shape";
import { pieceMass } from "../material/pieceMass";
import type { Shop } from "../shop/shop";
import { cutLoads, type Loads } from "../yield/cutLoads";
import { lineCost, type LineWork } from "./lineCost";
import { shopBlade } from "./shopBlade";

/** An order line with everything that it needs. */
export interface QuoteWork {
  readonly section: Shape;
  readonly material: Material;
  readonly length: number;
  readonly quantity: number;
  readonly blade: BladeClass;
  readonly shop: Shop;
}

const needed = (value: number | undefined, label: string): number => {
  if (value === undefined) throw new InputError("invalid", "settings", '{parameter} give no "{label}"', { label });
  return value;
};

/** Bars, loads and cuts; the kerf along the bar is longer under a mitre. */
const loadsOf = ({ section, length, quantity, shop }: QuoteWork, kerf: number): Loads => {
  const slant = section.area / (section.pieces * section.pieceArea);
  const bar = {
    stock: needed(shop.stockLength, "Stock length"),
    piece: length,
    kerf: kerf * slant,
    trim: shop.trim,
    grip: shop.grip,
  };
  return cutLoads({ bar, quantity, perCut: section.pieces, usefulRemnant: shop.usefulRemnant });
};

/** What a volume of bar is worth above its scrap; nothing where no material price is known. */
const materialValue = ({ material, shop }: QuoteWork): number => {
  const price = material.price ?? shop.materialPrice;
  return price === undefined ? 0 : material.density * (price - shop.scrapPrice);
};

/** The line's work but for the rate that it is cut at. */
function workAt(work: QuoteWork, loads: Loads): (rate: number) => LineWork {
  const { section, material, blade, shop } = work;
  const { price, life } = shopBlade({ blade, material, shop });
  if (shop.breakInArea > life)
    throw new InputError("invalid", "settings", "{parameter} give a Break-in area above the life of the blade");
  return (rate) => ({
    cycles: loads.cuts + (shop.trim > 0 ? loads.loads : 0),
    cutMinutes: section.area / rate,
    handlingMinutes: shop.handlingMinutes,
    loads: loads.loads,
    loadMinutes: shop.loadMinutes,
    setupMinutes: shop.setupMinutes,
    area: (loads.barCuts * section.area) / section.pieces,
    price,
    life,
    changeMinutes: shop.changeMinutes,
    breakInMinutes: (shop.breakInArea / rate) * (1 / shop.breakInFeedShare - 1),
    kerfVolume: loads.kerf * section.pieceArea,
    endsVolume: loads.ends * section.pieceArea,
    materialValue: materialValue(work),
    hourlyCost: needed(shop.hourlyCost, "Hourly cost"),
    availability: shop.availability,
  });
}

/** An order line priced. */
export interface QuotedLine {
  readonly prediction: CutPrediction;
  readonly loads: Loads;
  /** What lineCost was given. */
  readonly line: LineWork;
  readonly parts: ReturnType<typeof lineCost>;
  readonly minutesLow: number;
  readonly minutesHigh: number;
  /** Mass of all pieces [kg]. */
  readonly mass: number;
  /** Price of the line [money]. */
  readonly price: number;
  readonly minimumApplied: boolean;
}

/**
 * Prices one order line with one class of blade: the cut is predicted, bars and cuts are counted, the parts are added by
 * lineCost, price = max(cost / (1 − margin), minimum charge).
 * @param work section; material; length [mm]; quantity of pieces; blade class; shop
 * @returns the price [money], minutes at the nominal, high and low rate [min], mass [kg], and what they were made from
 * @throws InputError as predictCut, cutLoads, shopBlade; "invalid": the shop block lacks Hourly cost or Stock length
 * @source common practice; margin on the price: P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.4
 */
export function quoteLine(work: QuoteWork): QuotedLine {
  const { section, material, length, quantity, shop } = work;
  const prediction = predictCut({ ...work, pitch: undefined });
  const loads = loadsOf(work, prediction.cut.saw.band.kerf);
  const at = workAt(work, loads);
  const line = at(prediction.rate);
  const parts = lineCost(line);
  const price = parts.cost / (1 - shop.margin);
  return {
    prediction,
    loads,
    line,
    parts,
    minutesLow: lineCost(at(prediction.rateHigh)).minutes,
    minutesHigh: lineCost(at(prediction.rateLow)).minutes,
    mass: quantity * pieceMass({ area: section.pieceArea, length, material }),
    price: Math.max(price, shop.minimumCharge),
    minimumApplied: price < shop.minimumCharge,
  };
}
