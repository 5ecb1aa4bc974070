import { cuttingConstants as k } from "../data/cuttingConstants";
import type { Station } from "../section/section";
import { chipAtForce } from "./chipAtForce";
import { limitNames, type Cut, type CutRun } from "./cut";
import { cuttingForce } from "./cuttingForce";

/** The chip at one depth and which limit holds it (its place in limitNames). */
interface Held {
  readonly chip: number;
  readonly by: number;
}

/** Greatest chip of a tooth: less where fewer than three teeth share the thinnest lasting part. */
const toothLoad = ({ chips, profile, pitch }: Cut): number => {
  const share = Math.max(k.leastToothShare.value, Math.sqrt(Math.min(1, profile.thinnest / (3 * pitch.mean))));
  return Math.max(chips.floor, chips.greatest * share);
};

/** The least of the limits at one depth; `teeth` is what the saw's control divides the load by. */
function holdChip(station: Station, cut: Cut, greatest: number, teeth: number): Held {
  const { chips, pitch, speed, limits, force } = cut;
  const inContact = station.contact / pitch.mean;
  let chip = Math.max(chips.load / teeth, Math.min(chips.floor, chips.fullLoad / teeth));
  let by = 0;
  const hold = (most: number, limit: number) => {
    if (most < chip) [chip, by] = [most, limit];
  };
  hold(greatest, 1);
  // Above the group's speed neither a full gullet nor a given force may cut more than at that speed.
  hold(
    (chips.credit * (k.gulletArea.value * k.gulletFill.value * pitch.mean ** 2)) / (station.joined * cut.chipVolume),
    2,
  );
  if (limits.maximumFeed !== undefined) hold((limits.maximumFeed * pitch.mean) / speed, 3);
  if (limits.cuttingForce !== undefined)
    hold(chips.credit * chipAtForce({ force: limits.cuttingForce(station.extent), teeth: inContact, law: force }), 4);
  if (limits.power !== undefined)
    hold(chipAtForce({ force: (limits.power * 60_000) / speed, teeth: inContact, law: force }), 5);
  return { chip, by };
}

/** With a constant feed the depth that allows least governs the whole way. */
const leastHeld = (stations: readonly Station[], cut: Cut, greatest: number): Held & { readonly depth: number } => {
  const teeth = cut.profile.meanWidth / cut.pitch.mean;
  let least: Held & { depth: number } = { chip: Infinity, by: 0, depth: 0 };
  for (const s of stations) {
    const held = holdChip(s, cut, greatest, teeth);
    if (held.chip < least.chip) least = { ...held, depth: s.depth };
  }
  return least;
};

/**
 * Takes a cut down its way: at each depth the chip is the least of the usual rate, the tooth load, the gullet and the
 * saw's limits; feed = chip·speed/pitch; minutes = Σ travel/feed; rate = area/minutes.
 * @param cut profile [mm], pitch [mm], speed [mm/min], chips [mm], force law [N/mm²], limits [mm/min, N, W]
 * @returns minutes [min], rate [mm²/min], share of the time of each limit [-], chips [mm], force [N], power [W]
 * @source area rate = speed × chip × teeth in contact, and cutting minutes = area / area rate: German vocational tables book, sawing page (read)
 */
export function runCut(cut: Cut): CutRun {
  const { profile, pitch, speed, force, limits, chipVolume, chips } = cut;
  const stations = profile.stations.filter((s) => s.contact > 0);
  const greatest = toothLoad(cut);
  const constant = limits.constantFeed ? leastHeld(stations, cut, greatest) : undefined;
  const thin = Math.min(k.rubbingChip.value, 0.7 * chips.nominal);
  const times = limitNames.map(() => 0);
  const room = k.gulletArea.value * k.gulletFill.value * pitch.mean ** 2;
  let [minutes, chipArea, thinArea, fill, most] = [0, 0, 0, 0, 0];
  for (const s of stations) {
    const { chip, by } = constant ?? holdChip(s, cut, greatest, s.contact / pitch.mean);
    const taken = (s.travel * pitch.mean) / (chip * speed);
    minutes += taken;
    times[by]! += taken;
    chipArea += chip * s.contact * s.travel;
    if (chip < thin) thinArea += s.contact * s.travel;
    fill = Math.max(fill, (chip * s.joined * chipVolume) / room);
    most = Math.max(most, cuttingForce({ chip, teeth: s.contact / pitch.mean, law: force }));
  }
  return {
    minutes,
    rate: profile.area / minutes,
    shares: times.map((t) => t / minutes),
    meanChip: chipArea / profile.area,
    greatestForce: most,
    greatestPower: (most * speed) / 60_000,
    gulletFill: fill,
    thinShare: thinArea / profile.area,
    governingDepth: constant?.depth ?? 0,
  };
}
