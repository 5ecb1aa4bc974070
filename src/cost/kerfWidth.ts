import { usualBand } from "../cutting/usualBand";
import type { Shape } from "../section/shape";
import type { Shop } from "../shop/shop";

/**
 * Width of the slot: the shop's kerf, else that of the band usual for the work.
 * @param input section [mm]; shop
 * @returns kerf [mm]
 * @throws InputError "invalid": no kerf is given and the size is only an area
 * @source usual bands: data/cuttingConstants
 */
export function kerfWidth({ section, shop }: { readonly section: Shape; readonly shop: Shop }): number {
  return shop.kerf ?? usualBand({ extent: section.profile().maximumExtent, shop }).kerf;
}
