import type { Shape } from "../section/shape";
import type { Shop } from "../shop/shop";
import { cutLoads, type Loads } from "../yield/cutLoads";
import { needed } from "./needed";

interface BarLoadsInput {
  readonly section: Shape;
  /** Of a piece [mm]. */
  readonly length: number;
  /** Pieces to saw. */
  readonly pieces: number;
  /** Width of the slot [mm]. */
  readonly kerf: number;
  readonly shop: Shop;
}

/**
 * Bars, loads and cuts of pieces of one length from the shop's bars; under a mitre the kerf is longer along the bar, by the
 * cut area over the square one.
 * @param input section; length and kerf [mm]; pieces [-]; shop
 * @returns as cutLoads [-], [mm]
 * @throws InputError as cutLoads; "invalid": the shop block gives no Stock length
 * @source geometry
 */
export function barLoads({ section, length, pieces, kerf, shop }: BarLoadsInput): Loads {
  const { trim, grip, usefulRemnant } = shop;
  const slant = section.area / (section.pieces * section.pieceArea);
  const bar = { stock: needed(shop.stockLength, "Stock length"), piece: length, kerf: kerf * slant, trim, grip };
  return cutLoads({ bar, quantity: pieces, perCut: section.pieces, usefulRemnant });
}
