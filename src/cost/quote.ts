import type { BladeClass } from "../blade/bladeClass";
import { InputError } from "../errors";
import type { Material } from "../material/material";
import type { Text } from "../phrase";
import type { OrderItem } from "../item/item";
import { readAs } from "../item/readAs";
import type { Shop } from "../shop/shop";
import { quoteLine, type QuotedLine, type QuoteWork } from "./quoteLine";

interface QuoteInput {
  readonly item: OrderItem;
  readonly blade: BladeClass | "cheapest";
  readonly quantity: number;
  readonly material: Material | undefined;
  readonly length: number | undefined;
  readonly shop: Shop;
}

type Chosen = QuotedLine & { readonly blade: BladeClass };

/** A class that cannot make this cut is out; a class that the shop block does not price refuses the line. */
function tryClass(work: Omit<QuoteWork, "blade">, blade: BladeClass): Chosen | InputError {
  try {
    return { ...quoteLine({ ...work, blade }), blade };
  } catch (refusal) {
    if (refusal instanceof InputError && refusal.reason === "none") return refusal;
    throw refusal;
  }
}

function cheapest(work: Omit<QuoteWork, "blade">): Chosen {
  const [biMetal, carbide] = [tryClass(work, "bi-metal"), tryClass(work, "carbide")];
  if (carbide instanceof InputError) {
    if (biMetal instanceof InputError) throw biMetal;
    return biMetal;
  }
  return biMetal instanceof InputError || carbide.parts.cost < biMetal.parts.cost ? carbide : biMetal;
}

/** What the argument gives, else what the description says; where neither does, the description's own reason. */
const given = <T>(value: T | undefined, described: T | InputError): T => {
  const found = value ?? described;
  if (found instanceof InputError) throw found;
  return found;
};

/** The results of QUOTE by their names in the worksheet. */
export interface Quote {
  readonly priceLine: number;
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
export function quote({ item, blade, quantity, shop, ...wanted }: QuoteInput): Quote {
  const section = given(undefined, item.shape);
  const material = given(wanted.material, item.grade);
  const work = { section, material, length: given(wanted.length, item.length), quantity, shop };
  const line: Chosen = blade === "cheapest" ? cheapest(work) : { ...quoteLine({ ...work, blade }), blade };
  const { prediction, loads, parts } = line;
  return {
    priceLine: line.price,
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
    minimumApplied: line.minimumApplied ? "yes" : "no",
    size: section.text,
    material: material.name,
    blade: line.blade,
    readAs: readAs({
      size: section.text,
      material: material.name,
      length: work.length,
      quantity,
      notes: item.notes,
    }),
  };
}
