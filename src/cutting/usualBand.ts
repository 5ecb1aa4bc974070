import { cuttingConstants as k, usualBands } from "../data/cuttingConstants";
import type { Shop } from "../shop/shop";

export interface Band {
  readonly width: number;
  readonly thickness: number;
  readonly kerf: number;
  /** The shop block names the band's width: its stiffness can limit the cut. */
  readonly described: boolean;
}

/**
 * The band that runs: the shop block's, else the one usual for this overall width of work. A width alone gets the
 * usual thickness of that width; a thickness gets the kerf 1.54 × thickness; a kerf that is given always wins.
 * @param input extent overall width of the work [mm]; shop
 * @returns width, thickness, kerf [mm]
 * @source usual bands: judgement; kerf per thickness: common practice, no source
 */
export function usualBand({ extent, shop }: { readonly extent: number; readonly shop: Shop }): Band {
  const usual = usualBands.find((b) => extent <= b.upTo)!;
  const { bandWidth, bandThickness } = shop;
  const near =
    bandWidth === undefined
      ? usual
      : (usualBands.find((b) => b.width >= bandWidth - k.usualWidthSlack.value) ?? usualBands[usualBands.length - 1]!);
  const thickness = bandThickness ?? near.thickness;
  const made = usualBands.find((b) => Math.abs(b.thickness - thickness) < k.usualThicknessSlack.value);
  return {
    width: bandWidth ?? usual.width,
    thickness,
    kerf: shop.kerf ?? made?.kerf ?? k.kerfPerThickness.value * thickness,
    described: bandWidth !== undefined,
  };
}
