import type { BladeClass } from "../blade/bladeClass";
import { InputError, orRefusal } from "../errors";
import type { OrderItem } from "../item/item";
import type { Material } from "../material/material";
import type { Shop } from "../shop/shop";
import { quoteLine, type QuotedLine, type QuoteWork } from "./quoteLine";

export interface QuoteInput {
  readonly item: OrderItem;
  readonly blade: BladeClass | "cheapest";
  readonly quantity: number;
  readonly material: Material | undefined;
  readonly length: number | undefined;
  readonly shop: Shop;
}

/** A class that cannot make this cut is out; a class that the shop block does not price refuses the line. */
function tryClass(work: Omit<QuoteWork, "blade">, blade: BladeClass): QuotedLine | InputError {
  const line = orRefusal(() => quoteLine({ ...work, blade }));
  if (line instanceof InputError && line.reason !== "none") throw line;
  return line;
}

function cheapest(work: Omit<QuoteWork, "blade">): QuotedLine {
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

/**
 * The order line of a quote: what is given beside the description wins; with "cheapest" the class of lower cost.
 * @param input item, a size or a whole description line; blade class or "cheapest"; quantity; material; length [mm]; shop
 * @returns the line priced [money], with its section, material, length [mm] and class of blade
 * @throws InputError "invalid": material or length neither given nor described; as quoteLine
 * @source see quoteLine
 */
export function chooseLine({ item, blade, quantity, shop, ...wanted }: QuoteInput): QuotedLine {
  const section = given(undefined, item.shape);
  const material = given(wanted.material, item.grade);
  const length = given(wanted.length, item.length);
  return blade === "cheapest"
    ? cheapest({ section, material, length, quantity, shop })
    : quoteLine({ section, material, length, quantity, blade, shop });
}
