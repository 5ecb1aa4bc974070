import { inch } from "../quantities";
import { cuttingConstants as k, speedPoints } from "../data/cuttingConstants";
import type { BladeRow, Group } from "../data/groups";
import { InputError } from "../errors";
import type { Material } from "../material/material";
import type { Shop } from "../shop/shop";
import { logLine } from "./logLine";

/** Band speed of one work on one saw [mm/min]. */
export interface CutSpeed {
  /** What the material and the work ask for. */
  readonly wanted: number;
  readonly speed: number;
  readonly slowest: number;
  readonly top: number;
  /** What keeps the speed under the one wanted. */
  readonly capped: "none" | "saw" | "general";
  /** The factors on the speed of the grade: size, hardness, coolant, worn saw [-]. */
  readonly factors: {
    readonly size: number;
    readonly hardness: number;
    readonly coolant: number;
    readonly worn: number;
  };
}

const bySize = speedPoints.map(({ width, value }) => [width * inch, value] as const);

/** Hardness counts only above the group's: no credit below it. */
const hardnessFactor = ({ hardness: { least, most } }: Material, { maximumHardness }: Group): number => {
  const hardness = (least + most) / 2;
  if (hardness <= maximumHardness) return 1;
  return Math.max(k.hardnessLeast.value, (maximumHardness / hardness) ** k.hardnessSpeed.value);
};

const coolantFactor = ({ coolant }: Shop, { family }: Material, { dry }: Group): number => {
  if (dry || family === "magnesium") return 1;
  return coolant === "dry" ? k.drySpeed.value : coolant === "mist" ? k.mistSpeed.value : 1;
};

/** The saw's slowest speed above its fastest, or far above the one wanted. */
function refuse(slowest: number, wanted: number, group: Group, shop: Shop): void {
  const speed = (number: number) => ({ number, quantity: "bandSpeed" as const });
  const most = shop.maximumBandSpeed ?? Infinity;
  if (slowest > most)
    throw new InputError("invalid", "settings", "Minimum band speed, {slowest}, is above Maximum band speed, {most}", {
      slowest: speed(slowest),
      most: speed(most),
    });
  const top = wanted * k.tooFast.value;
  if (slowest > top)
    throw new InputError(
      "none",
      "",
      "The slowest band speed of this saw, {slowest}, is above the fastest for {group}, {top}",
      { slowest: speed(slowest), group: group.name, top: speed(top) },
    );
}

/**
 * Band speed: wanted = v of the grade × size × hardness × coolant × saw; v = max(slowest, min(wanted, top)). Size: the
 * handbook's points, straight in ln W. Hardness: max(0.5, (HB0/HB)^1.4) above the group's HB0.
 * @param input row of the grade [mm/min]; group HB0 [HB]; material HB [HB]; meanWidth W [mm]; shop
 * @returns wanted, speed, slowest, top [mm/min], what caps it, and the factors [-]
 * @throws InputError "none": the saw cannot run slowly enough; "invalid": its slowest speed is above its fastest
 * @source Machinery's Handbook, 31st ed., p. 1245 (read); factors: see data/cuttingConstants
 */
export function cutSpeed({
  row,
  group,
  material,
  meanWidth,
  shop,
}: {
  readonly row: BladeRow;
  readonly group: Group;
  readonly material: Material;
  readonly meanWidth: number;
  readonly shop: Shop;
}): CutSpeed {
  const worn = shop.sawCondition === "worn" ? k.wornSpeed.value : 1;
  const size = logLine(bySize, meanWidth, "stays");
  const [hardness, coolant] = [hardnessFactor(material, group), coolantFactor(shop, material, group)];
  const wanted = row.speed * size * hardness * coolant * worn;
  const slowest = shop.minimumBandSpeed ?? 0;
  refuse(slowest, wanted, group, shop);
  const top = shop.maximumBandSpeed ?? (group.letter === "N" ? k.generalTopSpeed.value : Infinity);
  const speed = Math.max(slowest, Math.min(wanted, top));
  const capped = speed >= wanted ? "none" : shop.maximumBandSpeed === undefined ? "general" : "saw";
  return { wanted, speed, slowest, top, capped, factors: { size, hardness, coolant, worn } };
}
