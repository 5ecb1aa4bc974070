import { cuttingConstants as k } from "../data/cuttingConstants";
import type { Station } from "../section/profile";
import { chipAtForce } from "./chipAtForce";
import type { Cut, CutRun, ForceLaw, LimitName } from "./cut";
import { cuttingForce } from "./cuttingForce";
import { gulletRoom } from "./gulletRoom";

/** Multipliers on the uncertain constants: bite and gullet room together, specific force, feed force per cutting force. */
export interface Scenario {
  readonly rate: number;
  readonly force: number;
  readonly feedShare: number;
}

/** Feed at one depth [mm/min], the band speed there [mm/min], and what holds it. */
interface Held {
  readonly feed: number;
  readonly speed: number;
  readonly by: LimitName;
}

/** Feed per band travel u [-] at one depth, before motor and maximum feed, and what holds it. */
function pushed(
  station: Station,
  cut: Cut,
  law: ForceLaw,
  { rate, feedShare }: Scenario,
): { u: number; by: LimitName } {
  const { plan, pitch, profile, limits, credit, pitchFactor: g } = cut;
  const [bite, room, six] = [cut.bite * rate, cut.room * rate, k.fullTeeth.value * plan.target];
  // A saw of constant rate holds the bite of this depth, one of constant feed that of the mean width.
  const width = limits.constantFeed ? profile.meanWidth : station.contact;
  const usual = bite * Math.min(1, width / six);
  let u = (usual * g) / width;
  let by: LimitName = "usual rate";
  const full = (room * g) / (limits.constantFeed ? Math.max(width, station.contact) : width);
  if (full < u) [u, by] = [full, "gullet"];
  if (limits.feedForce === undefined) return { u, by };
  const force = limits.feedForce(station.extent) / (k.feedShare.value * feedShare);
  const most = (credit * chipAtForce({ force, teeth: station.contact / pitch.mean, law })) / pitch.mean;
  return most < u ? { u: most, by: "feed force" } : { u, by };
}

/** The motor slows the band and keeps the chip; under the slowest speed the chip is thinned. Then the maximum feed. */
function driven(station: Station, cut: Cut, law: ForceLaw, { u, by }: { u: number; by: LimitName }): Held {
  const { pitch, limits, speed, slowest, wanted } = cut;
  const { power, maximumFeed } = limits;
  let held: Held = { feed: u * speed, speed, by };
  if (power !== undefined) {
    const teeth = station.contact / pitch.mean;
    const can = (60_000 * power) / cuttingForce({ chip: u * pitch.mean, teeth, law });
    const least = Math.min(speed, Math.max(slowest, Math.min(k.motorSpeed.value, k.motorShare.value * wanted)));
    if (can < least) {
      const chip = chipAtForce({ force: (60_000 * power) / least, teeth, law });
      held = { feed: (chip * least) / pitch.mean, speed: least, by: "motor power" };
    } else if (can < speed) held = { feed: u * can, speed: can, by: "motor power" };
  }
  return maximumFeed !== undefined && maximumFeed < held.feed
    ? { feed: maximumFeed, speed: held.speed, by: "maximum feed" }
    : held;
}

/** A depth with what is pushed into it. */
interface Way {
  readonly s: Station;
  readonly u: number;
  readonly by: LimitName;
}

/** With a constant feed the depth that allows least governs the whole way. */
function governed(ways: readonly Way[]): { readonly ways: readonly Way[]; readonly depth: number } {
  const least = ways.reduce((a, b) => (b.u < a.u ? b : a));
  return { ways: ways.map(({ s }) => ({ s, u: least.u, by: least.by })), depth: least.s.depth };
}

/** Shares of the time of each limit [-]. */
function sharesOf(held: readonly Held[], times: readonly number[], minutes: number): CutRun["shares"] {
  const shares = { "usual rate": 0, gullet: 0, "feed force": 0, "maximum feed": 0, "motor power": 0 };
  held.forEach(({ by }, i) => {
    shares[by] += times[i]! / minutes;
  });
  return shares;
}

/**
 * Takes a cut down its way. Feed per band travel u = min(b·min(1, L/6p*), room)·g/L, at most what the feed force allows;
 * the motor lowers the band speed v to 60000·P/Fc(u); feed = u·v, at most the maximum feed; minutes = Σ travel/feed.
 * @param cut profile [mm], pitch [mm], speed [mm/min], bite and room [mm], force law [N/mm²], limits [mm/min, N, W]
 * @param scenario multipliers of the uncertain constants [-]
 * @returns minutes [min], rate [mm²/min], share of the time of each limit [-], speed [mm/min], force [N], power [W]
 * @source rate = band speed × bite: definition; cutting minutes = area / area rate: German vocational tables book, sawing page (read)
 */
export function runCut(cut: Cut, scenario: Scenario): CutRun {
  const { profile, pitch, limits, group } = cut;
  const law = { ...cut.force, kc11: cut.force.kc11 * scenario.force };
  const free = cut.stations.filter((s) => s.contact > 0).map((s): Way => ({ s, ...pushed(s, cut, law, scenario) }));
  const { ways, depth } = limits.constantFeed ? governed(free) : { ways: free, depth: 0 };
  const own = ways.map((way) => driven(way.s, cut, law, way));
  const least = own.reduce((a, b) => (b.feed < a.feed ? b : a));
  const held = limits.constantFeed ? own.map(() => least) : own;
  const times = held.map(({ feed }, i) => ways[i]!.s.travel / feed);
  const minutes = times.reduce((a, b) => a + b, 0);
  const room = gulletRoom(pitch.mean, group);
  let [travelled, force, power, fill, pushedArea, chipArea] = [0, 0, 0, 0, 0, 0];
  held.forEach(({ feed, speed }, i) => {
    const { s, u, by } = ways[i]!;
    const here = cuttingForce({ chip: (feed * pitch.mean) / speed, teeth: s.contact / pitch.mean, law });
    travelled += speed * times[i]!;
    force = Math.max(force, here);
    power = Math.max(power, (here * speed) / 60_000);
    fill = Math.max(fill, (feed * s.contact) / (speed * room));
    chipArea += u * pitch.mean * s.contact * s.travel;
    if (by === "feed force") pushedArea += s.contact * s.travel;
  });
  return {
    minutes,
    rate: profile.area / minutes,
    shares: sharesOf(held, times, minutes),
    speed: travelled / minutes,
    greatestForce: force,
    greatestPower: power,
    gulletFill: fill,
    pushed: pushedArea / profile.area,
    pushedChip: chipArea / profile.area,
    governingDepth: depth,
  };
}
