import { cuttingConstants as k } from "../data/cuttingConstants";
import type { BladeRow, Group, Spread } from "../data/groups";
import { InputError } from "../errors";
import type { Material } from "../material/material";
import type { Shape } from "../section/shape";
import type { Shop, Special } from "../shop/shop";
import { bandForce } from "./bandForce";
import type { BladeClass } from "../blade/bladeClass";
import { bladeRow } from "./bladeRow";
import type { Chips, Cut, SawLimits } from "./cut";
import { cutFactors } from "./cutFactors";
import type { Pitch } from "../blade/pitch";
import type { Scenario } from "./scenario";
import { usualBand, type Band } from "./usualBand";

export interface CutWork {
  readonly section: Shape;
  readonly material: Material;
  readonly blade: BladeClass;
  readonly shop: Shop;
}

/** A cut with everything but its pitch, and what the rest of the model asks of it. */
export interface PreparedCut {
  readonly forPitch: (pitch: Pitch) => Cut;
  /** Band speed of the group before the saw's own limits [mm/min]. */
  readonly wantedSpeed: number;
  readonly speed: number;
  readonly slowestSpeed: number;
  readonly capped: "none" | "saw" | "general";
  readonly tooFast: boolean;
  readonly band: Band;
  readonly span: number;
  readonly nominalChip: number;
}

/** A rate factor for the grade wins over one for its group, and both over the saw's. */
const rateFactor = ({ rateFactors, rateFactor: general }: Shop, { key, group, rateFactor: own }: Material): number => {
  const of = (name: string | undefined): number | undefined => rateFactors.find((s: Special) => s.of === name)?.value;
  return own ?? of(key) ?? of(group?.name) ?? general;
};

const idleOf = ({ idlePower, motorPower }: Shop): number =>
  idlePower ?? Math.min(k.idleMost.value * motorPower!, k.idleBase.value + k.idleShare.value * motorPower!);

/** Power left at the band when the drive and the idle band have taken theirs [W]. */
const bandPower = (shop: Shop): number | undefined =>
  shop.motorPower === undefined ? undefined : Math.max(0, shop.driveEfficiency * (shop.motorPower - idleOf(shop)));

/** Cutting force [N] that the band's stiffness and the saw's feed allow at one depth. */
const forceLimit = (band: Band, span: number, shop: Shop, share: number): SawLimits["cuttingForce"] => {
  const thrust = shop.maximumFeedForce ?? Infinity;
  if (!band.described) return shop.maximumFeedForce === undefined ? undefined : () => thrust / share;
  const central = bandForce({ ...band, span, extent: 0, tension: shop.bandTension }) * k.bucklingShare.value;
  return (extent) => Math.min(thrust, central / (1 - extent / (2 * span))) / share;
};

const refuseTooBig = ({ section }: CutWork, shop: Shop): void => {
  const { maximumExtent, height } = section.profile();
  const size = (number: number) => ({ number, quantity: "size" as const });
  if (shop.maximumWidth !== undefined && maximumExtent > shop.maximumWidth * (1 + 1e-9))
    throw new InputError("invalid", "section", "the work is {width} wide; this saw takes {most}", {
      width: size(maximumExtent),
      most: size(shop.maximumWidth),
    });
  if (shop.maximumHeight !== undefined && height > shop.maximumHeight * (1 + 1e-9))
    throw new InputError("invalid", "section", "the work is {height} high; this saw takes {most}", {
      height: size(height),
      most: size(shop.maximumHeight),
    });
};

/** Top speed: the saw's own, else that of a general saw for the metals that could be cut far faster. */
const topSpeed = (shop: Shop, letter: string): { readonly most: number; readonly capped: "saw" | "general" } =>
  shop.maximumBandSpeed !== undefined
    ? { most: shop.maximumBandSpeed, capped: "saw" }
    : { most: letter === "N" ? k.generalTopSpeed.value : Infinity, capped: "general" };

/**
 * The chip of carbide in non-ferrous metals belongs to plate saws at the group's own speed. On a saw that runs slower it
 * falls towards the bi-metal chip, which it is at half that speed and below.
 */
const slowChip = ({ letter, blades }: Group, row: BladeRow, share: number): Spread => {
  const bi = blades["bi-metal"];
  if (letter !== "N" || bi === undefined) return row.chip;
  const full = Math.min(1, Math.max(0, (share - k.plainChipShare.value) / (1 - k.plainChipShare.value)));
  const mix = (of: keyof Spread): number => bi.chip[of] + (row.chip[of] - bi.chip[of]) * full;
  return { low: mix("low"), nominal: mix("nominal"), high: mix("high") };
};

/**
 * Puts group, factors and saw together: band speed v = min(v nominal × factors, top speed), never under the saw's
 * slowest (there the chip is thinned by the same ratio: no credit for a saw that is too fast); chip load
 * q = f nominal × factors × 13.78 teeth × rate factor.
 * @param work section, material, blade, shop; scenario multipliers of the uncertain constants [-]
 * @returns the cut for any pitch; speeds [mm/min], sizes [mm], force [N]
 * @throws InputError "none": no data, too hard, saw too fast; "invalid": work too big, saw's speeds reversed, magnesium with flood coolant
 * @source data/groups, data/cuttingConstants
 */
export function prepareCut(work: CutWork, scenario: Scenario): PreparedCut {
  const { material, shop, section } = work;
  const { group, row } = bladeRow(material, work.blade);
  const profile = section.profile();
  refuseTooBig(work, shop);
  if (material.family === "magnesium" && shop.coolant === "flood")
    throw new InputError(
      "invalid",
      "",
      "{material} must not be cut with flood coolant: water and burning magnesium give off hydrogen. Cut dry, or with the mineral oil made for it, and follow the safety data sheet",
      { material: material.name },
    );
  const factors = cutFactors({ profile, material, group, shop });
  const wanted = row.speed.nominal * factors.speed;
  const { most, capped } = topSpeed(shop, group.letter);
  const slowest = shop.minimumBandSpeed ?? 0;
  if (slowest > (shop.maximumBandSpeed ?? Infinity))
    throw new InputError("invalid", "settings", "Minimum band speed, {slowest}, is above Maximum band speed, {most}", {
      slowest: { number: slowest, quantity: "bandSpeed" },
      most: { number: most, quantity: "bandSpeed" },
    });
  const top = row.speed.high * factors.speed;
  if (slowest > top)
    throw new InputError(
      "none",
      "",
      "The slowest band speed of this saw, {slowest}, is above the fastest for {group}, {top}",
      {
        slowest: { number: slowest, quantity: "bandSpeed" },
        group: group.name,
        top: { number: top, quantity: "bandSpeed" },
      },
    );
  const speed = Math.max(slowest, Math.min(wanted, most));
  const credit = speed > wanted ? wanted / speed : 1;
  const chip = slowChip(group, row, speed / wanted);
  const nominal = chip.nominal * factors.chip;
  const load = nominal * k.referenceTeeth.value * scenario.rate * rateFactor(shop, material) * credit;
  const floor = Math.min(k.rubbingChip.value, nominal * factors.interrupted) * credit;
  const greatest = chip.high * factors.chip * factors.interrupted * scenario.toothLoad * credit;
  const band = usualBand({ extent: profile.maximumExtent, shop });
  const span = profile.maximumExtent + shop.guideGap;
  const chipsFor = (pitch: Pitch): Chips => {
    const crowded = Math.min(1, Math.sqrt(k.crowdedTeeth.value / (profile.meanWidth / pitch.mean)));
    return { load: load * factors.interrupted * crowded, fullLoad: load * crowded, floor, greatest, nominal, credit };
  };
  const limits = {
    maximumFeed: shop.maximumFeed,
    cuttingForce: forceLimit(band, span, shop, k.feedShare.value * scenario.feedShare),
    power: bandPower(shop),
    constantFeed: shop.feedMode === "constant feed",
  };
  const force = {
    kc11: group.kc11 * scenario.force,
    mc: group.mc,
    kerf: band.kerf * k.sawFactor.value * k.wearFactor.value,
  };
  const forPitch = (pitch: Pitch): Cut => ({
    profile,
    group,
    pitch,
    speed,
    chips: chipsFor(pitch),
    force,
    limits,
    chipVolume: group.chipVolume * scenario.chipVolume,
  });
  return {
    forPitch,
    wantedSpeed: wanted,
    speed,
    slowestSpeed: slowest,
    capped: speed < wanted ? capped : "none",
    tooFast: credit < 1,
    band,
    span,
    nominalChip: nominal,
  };
}
