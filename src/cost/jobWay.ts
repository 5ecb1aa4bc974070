import type { BladeClass } from "../blade/bladeClass";
import { predictCut } from "../cutting/predictCut";
import type { Material } from "../material/material";
import type { Shape } from "../section/shape";
import type { Shop } from "../shop/shop";
import type { Loads } from "../yield/cutLoads";
import { barLoads } from "./barLoads";
import { lineMinutes } from "./lineMinutes";
import { sawnPieces } from "./sawnPieces";
import { sawWork } from "./sawWork";
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

type Counts = Pick<Loads, "cuts" | "barCuts" | "loads">;

/** Without a length every cut gives its pieces, and neither bars nor trim cuts are counted. */
function counted({ section, quantity, length, shop }: MixWork, kerf: number): Counts {
  const pieces = sawnPieces(quantity, shop);
  return length === undefined
    ? { cuts: Math.ceil(pieces / section.pieces), barCuts: pieces, loads: 0 }
    : barLoads({ section, length, pieces, kerf, shop });
}

/**
 * What a job of an order book takes with one class of blade, as QUOTE counts it: set-up once, loading per bar load, cut and
 * handling per cut, change and break-in per blade. With a length bars and trim cuts are counted.
 * @param work section; material; quantity of pieces; length [mm]; shop
 * @param blade class of blade
 * @returns cuts [-], area and life [mm²], run, bladeMinutes, minutesLow and minutesHigh [min], price [money], pitch [text]
 * @throws InputError as predictCut, barLoads, sawWork
 * @source see lineMinutes
 */
export function jobWay(work: MixWork, blade: BladeClass): JobWay {
  const { section, material, shop } = work;
  const { rate, rateLow, rateHigh, cut, pitch } = predictCut({ section, material, shop, blade, pitch: undefined });
  const counts = counted(work, cut.saw.band.kerf);
  const at = sawWork({ section, material, blade, shop }, counts);
  const { area, price, life } = at(rate);
  const { run, perBlade } = lineMinutes(at(rate));
  const minutesAt = (r: number): number => shop.setupMinutes + lineMinutes(at(r)).sawing;
  return {
    cuts: counts.cuts,
    area,
    run: shop.setupMinutes + run,
    bladeMinutes: perBlade,
    price,
    life,
    pitch: pitch.text,
    minutesLow: minutesAt(rateHigh),
    minutesHigh: minutesAt(rateLow),
  };
}
