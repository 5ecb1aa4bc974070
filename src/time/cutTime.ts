import type { Shape } from "../section/shape";
import type { Shop } from "../shop/shop";
import { cuttingMinutes } from "./cuttingMinutes";

/**
 * Minutes per cut at a known removal rate, T = A/rate + handling; where the shop names a maximum feed, the feed is
 * held to it at every depth.
 * @param input section A [mm²]; rate [mm²/min]; handling [min]; shop
 * @returns T [min]
 * @throws InputError "invalid": a maximum feed is given and the size is only an area
 * @source cutting time = area / area rate: German vocational tables book, sawing page (read)
 */
export function cutTime({
  section,
  rate,
  handling,
  shop,
}: {
  readonly section: Shape;
  readonly rate: number;
  readonly handling: number;
  readonly shop: Shop;
}): number {
  return cuttingMinutes({ section, rate, maximumFeed: shop.maximumFeed }) + handling;
}
