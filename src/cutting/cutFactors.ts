import { cuttingConstants as k } from "../data/cuttingConstants";
import type { Group } from "../data/groups";
import type { Material } from "../material/material";
import type { Profile } from "../section/section";
import type { Shop } from "../shop/shop";
import { widthFactors } from "./widthFactors";

/** Factors on band speed and on chip thickness; `interrupted` acts on the chip as well and is named apart. */
export interface CutFactors {
  readonly speed: number;
  readonly chip: number;
  readonly interrupted: number;
}

const interruptedBy = {
  solid: 1,
  hollow: k.hollowChip.value,
  "bundle of solids": k.solidBundleChip.value,
  "bundle of hollow": k.hollowBundleChip.value,
};

/** Hardness counts only above the group's range: no credit below it. */
const hardnessFactors = (material: Material, group: Group): { readonly speed: number; readonly chip: number } => {
  const hardness = (material.hardness.least + material.hardness.most) / 2;
  if (hardness <= group.maximumHardness) return { speed: 1, chip: 1 };
  const ratio = group.maximumHardness / hardness;
  return {
    speed: Math.max(k.hardnessSpeedLeast.value, ratio ** k.hardnessSpeed.value),
    chip: Math.max(k.hardnessChipLeast.value, ratio ** k.hardnessChip.value),
  };
};

/** Magnesium is cut dry as a rule: its usual values hold without coolant. */
const coolingFactors = (shop: Shop, burns: boolean): { readonly speed: number; readonly chip: number } => {
  const [speed, chip] =
    shop.coolant === "dry" && !burns
      ? [k.drySpeed.value, k.dryChip.value]
      : shop.coolant === "mist" && !burns
        ? [k.mistSpeed.value, k.mistChip.value]
        : [1, 1];
  const worn = shop.sawCondition === "worn" ? ([k.wornSpeed.value, k.wornChip.value] as const) : ([1, 1] as const);
  const both = { speed: speed * worn[0], chip: chip * worn[1] };
  const least = k.leastFactors.value / (both.speed * both.chip);
  return least > 1 ? { speed: both.speed, chip: both.chip * least } : both;
};

/**
 * The factors of width, hardness, coolant and saw on band speed and chip thickness, multiplied.
 * @param input profile; material; group; shop
 * @returns speed, chip and interrupted-cut factors [-]
 * @source data/cuttingConstants: each with its mark
 */
export function cutFactors({
  profile,
  material,
  group,
  shop,
}: {
  readonly profile: Profile;
  readonly material: Material;
  readonly group: Group;
  readonly shop: Shop;
}): CutFactors {
  const width = widthFactors(profile.meanWidth);
  const hard = hardnessFactors(material, group);
  const cooled = coolingFactors(shop, material.family === "magnesium");
  return {
    speed: width.speed * hard.speed * cooled.speed,
    chip: width.chip * hard.chip * cooled.chip,
    interrupted: interruptedBy[profile.kind],
  };
}
