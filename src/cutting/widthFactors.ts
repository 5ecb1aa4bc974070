import { cuttingConstants as k, widthChip } from "../data/cuttingConstants";

/** Chip factor between two rows of the table, straight in the logarithm of the width. */
const chipFactor = (width: number): number => {
  const above = widthChip.findIndex(([w]) => w >= width);
  if (above === 0) return widthChip[0]![1];
  if (above < 0) return widthChip[widthChip.length - 1]![1];
  const [[w0, f0], [w1, f1]] = [widthChip[above - 1]!, widthChip[above]!];
  return f0 + ((f1 - f0) * Math.log(width / w0)) / Math.log(w1 / w0);
};

/**
 * Factors of the mean width on band speed, (100/W)^0.15 within [0.75, 1.2], and on chip thickness (table, 0.8 at 25 mm to 1 at 100 mm).
 * @param width mean width W [mm]
 * @returns speed and chip factors [-]
 * @source derived, low confidence: see data/cuttingConstants
 */
export function widthFactors(width: number): { readonly speed: number; readonly chip: number } {
  const speed = (100 / width) ** k.widthExponent.value;
  return { speed: Math.min(k.widthMost.value, Math.max(k.widthLeast.value, speed)), chip: chipFactor(width) };
}
