import { cuttingConstants as k } from "../data/cuttingConstants";
import type { Group } from "../data/groups";
import { InputError } from "../errors";
import type { Kind, Profile, Station } from "../section/profile";
import { splitStations } from "../section/splitStations";
import type { Shop } from "../shop/shop";
import { specialValue } from "../shop/specialValue";
import { bandForce } from "./bandForce";
import { bladeRow } from "./bladeRow";
import { choosePitch } from "./choosePitch";
import type { Cut, CutSaw, CutWork, PitchedWork, SawLimits } from "./cut";
import { cutSpeed } from "./cutSpeed";
import { gulletRoom } from "./gulletRoom";
import { idlePower } from "./idlePower";
import { pitchPlan } from "./pitchPlan";
import { usualBand, type Band } from "./usualBand";

/** An interrupted cut bites less; it does not depend on the pitch. */
const interrupted: Readonly<Record<Kind, number>> = {
  solid: 1,
  hollow: k.hollowBite.value,
  "bundle of solids": k.solidBundleBite.value,
  "bundle of hollow": k.hollowBundleBite.value,
};

/** Power left at the band when the drive and the idle band have taken theirs [W]. */
const bandPower = (shop: Shop): number | undefined => {
  if (shop.motorPower === undefined) return undefined;
  const idle = idlePower(shop);
  if (idle < shop.motorPower) return shop.driveEfficiency * (shop.motorPower - idle);
  const power = (number: number) => ({ number, quantity: "power" as const });
  throw new InputError("invalid", "settings", "Idle power, {idle}, leaves nothing of Motor power, {motor}", {
    idle: power(idle),
    motor: power(shop.motorPower),
  });
};

/** Feed force that the saw can give and half of the band's buckling load, more where the load is spread. */
const feedForce = (band: Band, span: number, shop: Shop): SawLimits["feedForce"] => {
  const thrust = shop.maximumFeedForce ?? Infinity;
  if (!band.described) return shop.maximumFeedForce === undefined ? undefined : () => thrust;
  const { width, thickness } = band;
  const central = bandForce({ width, thickness, span, extent: 0, tension: shop.bandTension }) * k.bucklingShare.value;
  return (extent) => Math.min(thrust, central / (1 - extent / (2 * span)));
};

function refuseWork({ section, material, shop }: CutWork): void {
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
  if (material.family === "magnesium" && shop.coolant === "flood")
    throw new InputError(
      "invalid",
      "",
      "{material} must not be cut with flood coolant: water and burning magnesium give off hydrogen. Cut dry, or with the mineral oil made for it, and follow the safety data sheet",
      { material: material.name },
    );
}

/** The shop's rate factor for the work [-], and what stands behind it. */
const factorOf = ({ material, shop, blade }: CutWork): Pick<Cut, "rateFactor" | "factorFrom"> => {
  if (material.rateFactor !== undefined) return { rateFactor: material.rateFactor, factorFrom: undefined };
  const special = specialValue(shop.rateFactors, material, blade);
  return special === undefined
    ? { rateFactor: shop.rateFactor, factorFrom: shop.rateFactorFrom }
    : { rateFactor: special.value, factorFrom: special.from };
};

/** The factors on the bite that depend neither on the pitch nor on the shop's log [-]. */
const workFactors = ({ shop, section }: CutWork): Pick<Cut, "interruption" | "worn"> => ({
  interruption: interrupted[section.profile().kind],
  worn: shop.sawCondition === "worn" ? k.wornBite.value : 1,
});

/** Band, span, force law and limits: what the saw brings. */
function sawOf({ section, shop }: CutWork, group: Group): CutSaw {
  const { maximumExtent } = section.profile();
  const band = usualBand({ extent: maximumExtent, shop });
  const span = maximumExtent + shop.guideGap;
  return {
    band,
    span,
    force: { kc11: group.kc11, mc: group.mc, kerf: band.kerf * k.sawFactor.value * k.wearFactor.value },
    limits: {
      maximumFeed: shop.maximumFeed,
      feedForce: feedForce(band, span, shop),
      power: bandPower(shop),
      constantFeed: shop.feedMode === "constant feed",
    },
  };
}

/**
 * Stations split where the usual rate changes its law, and the widest contact as one without travel: force and gullets are
 * greatest there. Where no limit of a saw acts, one station a piece is exact.
 */
function stationsOf(profile: Profile, width: number, limits: SawLimits): readonly Station[] {
  const { maximumFeed, feedForce: force, power, constantFeed } = limits;
  const sums = maximumFeed === undefined && force === undefined && power === undefined && !constantFeed;
  const stations = splitStations({ profile, width, sums });
  const widest = stations.reduce((a, b) => (b.contact > a.contact ? b : a));
  const { depth, extent, longest, shortest } = widest;
  return [...stations, { depth, travel: 0, contact: profile.maximumWidth, extent, longest, shortest }];
}

/**
 * Puts grade, work, pitch and saw together: bite b = b of the grade × interruption × worn saw × rate factor × credit,
 * room = (0.25·0.7/R)·p* × credit. The credit is wanted/v where the saw cannot run as slowly as wanted: no higher rate for it.
 * @param work section, material, blade, shop; pitch p [mm], chosen where it is undefined
 * @param factor a further factor on the bite [-]
 * @returns the cut; speeds [mm/min], bites and sizes [mm], force [N]
 * @throws InputError "none": no data, no pitch suits, too hard, saw too fast; "invalid": work too big, saw's speeds reversed, no power left, magnesium with flood coolant
 * @source data/groups, data/cuttingConstants
 */
export function prepareCut(work: PitchedWork, factor = 1): Cut {
  const { material, shop, section, blade } = work;
  const { group, row } = bladeRow(material, blade);
  const profile = section.profile();
  refuseWork(work);
  const speeds = cutSpeed({ row, group, material, meanWidth: profile.meanWidth, shop });
  const credit = Math.min(1, speeds.wanted / speeds.speed);
  const plan = pitchPlan({ profile, group, blade });
  const pitch = work.pitch ?? choosePitch(work, plan);
  const { interruption, worn } = workFactors(work);
  const { rateFactor, factorFrom } = factorOf(work);
  const rateSpread = specialValue(shop.rateSpreads, material, blade)?.value ?? shop.rateSpread;
  const bite = row.bite * interruption * worn * rateFactor * factor * credit;
  const room = gulletRoom(plan.target, group) * credit;
  const saw = sawOf(work, group);
  return {
    speeds,
    saw,
    profile,
    group,
    row,
    pitch,
    plan,
    pitchFactor: plan.factor(pitch),
    bite,
    room,
    interruption,
    worn,
    rateFactor,
    factorFrom,
    rateSpread,
    judged: row.spread >= k.unpublishedSpread.value && rateFactor === 1 && rateSpread === undefined,
    credit,
    stations: stationsOf(profile, (k.fullTeeth.value * plan.target * Math.min(bite, room)) / bite, saw.limits),
  };
}
