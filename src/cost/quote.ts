import { tuningText } from "../cutting/tuningText";
import type { Text } from "../phrase";
import { readAs } from "../item/readAs";
import { chooseLine, type QuoteInput } from "./chooseLine";

/** The results of QUOTE by their names in the worksheet. */
export interface Quote {
  readonly priceLine: number;
  readonly priceLow: number;
  readonly priceHigh: number;
  readonly priceEach: number;
  readonly costEach: number;
  readonly minutes: number;
  readonly minutesLow: number;
  readonly minutesHigh: number;
  readonly pitch: Text;
  readonly rate: number;
  readonly cuts: number;
  readonly bars: number;
  readonly remnant: number;
  readonly mass: number;
  readonly timeCost: number;
  readonly bladeCost: number;
  readonly kerfCost: number;
  readonly endsCost: number;
  readonly "set-up": number;
  readonly materialCost: number;
  readonly minimumApplied: Text;
  readonly size: Text;
  readonly material: Text;
  readonly blade: Text;
  readonly readAs: Text;
}

/**
 * One order line priced: quoteLine with the blade named, or with the class of lower cost for "cheapest".
 * @param input item, a size or a whole description line, of which a material and a length given beside it win; blade class or "cheapest"; quantity of pieces; material; length of a piece [mm]; shop
 * @returns prices and costs [money], minutes of the whole line [min], rate [mm²/min], remnant [mm], mass of all pieces [kg], counts [-], texts [text]
 * @throws InputError "invalid": material or length neither given nor described; as quoteLine
 * @source see quoteLine
 */
export function quote(input: QuoteInput): Quote {
  const line = chooseLine(input);
  const { section, material, quantity, prediction, loads, parts } = line;
  const tuned = tuningText(prediction.cut);
  return {
    priceLine: line.price,
    priceLow: line.priceLow,
    priceHigh: line.priceHigh,
    priceEach: line.price / quantity,
    costEach: parts.cost / quantity,
    minutes: parts.minutes,
    minutesLow: line.minutesLow,
    minutesHigh: line.minutesHigh,
    pitch: prediction.pitch.text,
    rate: prediction.rate,
    cuts: loads.cuts,
    bars: loads.bars,
    remnant: loads.remnant,
    mass: line.mass,
    timeCost: parts.time,
    bladeCost: parts.blade,
    kerfCost: parts.kerf,
    endsCost: parts.ends,
    "set-up": parts.setUp,
    materialCost: parts.material,
    minimumApplied: line.minimumApplied ? "yes" : "no",
    size: section.text,
    material: material.name,
    blade: line.blade,
    readAs: readAs({
      size: section.text,
      material: material.name,
      length: line.length,
      quantity,
      notes: tuned === "" ? input.item.notes : [...input.item.notes, tuned],
    }),
  };
}
