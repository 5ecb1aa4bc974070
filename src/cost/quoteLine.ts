import type { BladeClass } from "../blade/bladeClass";
import { predictCut, type CutPrediction } from "../cutting/predictCut";
import { InputError } from "../errors";
import type { Material } from "../material/material";
import type { Shape } from "../section/shape";
import { pieceMass } from "../material/pieceMass";
import type { Shop } from "../shop/shop";
import type { Loads } from "../yield/cutLoads";
import { barLoads } from "./barLoads";
import { lineCost, type LineCost, type LineWork } from "./lineCost";
import { needed } from "./needed";
import { sawnPieces } from "./sawnPieces";
import { sawWork } from "./sawWork";

/** An order line with everything that it needs. */
export interface QuoteWork {
  readonly section: Shape;
  readonly material: Material;
  readonly length: number;
  readonly quantity: number;
  readonly blade: BladeClass;
  readonly shop: Shop;
}

const materialPrice = ({ material, shop }: QuoteWork): number | undefined => material.price ?? shop.materialPrice;

/** What a volume of bar is worth above its scrap; nothing where no material price is known. */
function materialValue(work: QuoteWork): number {
  const price = materialPrice(work);
  if (price === undefined) return 0;
  if (price < work.shop.scrapPrice)
    throw new InputError("invalid", "settings", "{parameter} give a Scrap price above the material price");
  return work.material.density * (price - work.shop.scrapPrice);
}

/** The bar that leaves in the pieces, where it is charged. */
const materialCost = (work: QuoteWork): number =>
  work.shop.chargeMaterial === "no"
    ? 0
    : work.quantity *
      work.length *
      work.section.pieceArea *
      work.material.density *
      needed(materialPrice(work), "Material price");

/** The line's work and its costs but for the rate that it is cut at. */
function workAt(work: QuoteWork, sawn: number, loads: Loads): (rate: number) => LineWork {
  const { section, shop, quantity, length } = work;
  const at = sawWork(work, loads);
  const lost = loads.ends + shop.remnantDiscount * loads.useful + (sawn - quantity) * length;
  const costs = {
    kerfVolume: loads.kerf * section.pieceArea,
    endsVolume: lost * section.pieceArea,
    materialValue: materialValue(work),
    materialCost: materialCost(work),
    hourlyCost: needed(shop.hourlyCost, "Hourly cost") + (shop.operatorCost ?? 0) * shop.operatorShare,
    availability: shop.availability,
  };
  return (rate) => Object.assign(at(rate), costs);
}

/** An order line priced, with what it was priced for. */
export interface QuotedLine extends QuoteWork {
  readonly prediction: CutPrediction;
  readonly loads: Loads;
  /** What lineCost was given. */
  readonly line: LineWork;
  readonly parts: LineCost;
  /** Pieces sawn, those tested and scrapped in them. */
  readonly sawn: number;
  readonly minutesLow: number;
  readonly minutesHigh: number;
  readonly priceLow: number;
  readonly priceHigh: number;
  /** Mass of all pieces [kg]. */
  readonly mass: number;
  /** Price of the line [money]. */
  readonly price: number;
  readonly minimumApplied: boolean;
}

/**
 * Prices one order line with one class of blade: the cut is predicted, pieces sawn = ceil(quantity / (1 − reject share)) +
 * test pieces, bars and cuts are counted, the parts are added by lineCost, price = max(cost / (1 − margin), minimum charge).
 * @param work section; material; length [mm]; quantity of pieces; blade class; shop
 * @returns the price and its low and high [money], minutes at the nominal, high and low rate [min], mass [kg], and what they were made from
 * @throws InputError as predictCut, cutLoads, shopBlade; "invalid": the shop block lacks Hourly cost, Stock length or, where it is charged, Material price, or its Scrap price is above the material price
 * @source common practice; margin on the price: P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.4
 */
export function quoteLine(work: QuoteWork): QuotedLine {
  const { section, material, length, quantity, blade, shop } = work;
  const prediction = predictCut({ section, material, blade, shop, pitch: undefined });
  const sawn = sawnPieces(quantity, shop);
  const loads = barLoads({ section, length, pieces: sawn, kerf: prediction.cut.saw.band.kerf, shop });
  const at = workAt(work, sawn, loads);
  const line = at(prediction.rate);
  const [parts, quick, slow] = [line, at(prediction.rateHigh), at(prediction.rateLow)].map(lineCost) as [
    LineCost,
    LineCost,
    LineCost,
  ];
  const priceOf = ({ cost }: LineCost): number => Math.max(cost / (1 - shop.margin), shop.minimumCharge);
  return {
    section,
    material,
    length,
    quantity,
    blade,
    shop,
    prediction,
    sawn,
    loads,
    line,
    parts,
    minutesLow: quick.minutes,
    minutesHigh: slow.minutes,
    priceLow: priceOf(quick),
    priceHigh: priceOf(slow),
    mass: quantity * pieceMass({ area: section.pieceArea, length, material }),
    price: priceOf(parts),
    minimumApplied: parts.cost / (1 - shop.margin) < shop.minimumCharge,
  };
}
