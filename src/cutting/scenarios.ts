import type { Scenario } from "./scenario";
import { cuttingConstants as k } from "../data/cuttingConstants";

/** The uncertain constants moved together; the ends hold about 80 % of what they allow. */
export const scenarios: Readonly<Record<"low" | "nominal" | "high", Scenario>> = {
  low: {
    rate: 1 / k.rateSpread.value,
    force: k.forceLow.value,
    feedShare: k.feedShareLow.value,
    toothLoad: 1 / k.toothLoadLow.value,
    chipVolume: k.chipVolumeLow.value,
  },
  nominal: { rate: 1, force: 1, feedShare: 1, toothLoad: 1, chipVolume: 1 },
  high: {
    rate: k.rateSpread.value,
    force: 1 / k.forceHigh.value,
    feedShare: 1 / k.feedShareHigh.value,
    toothLoad: k.toothLoadHigh.value,
    chipVolume: 1 / k.chipVolumeHigh.value,
  },
};
