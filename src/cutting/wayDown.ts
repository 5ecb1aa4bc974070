import { wattWork } from "../quantities";
import { cuttingConstants as k } from "../data/cuttingConstants";
import type { Station } from "../section/profile";
import { chipAtForce } from "./chipAtForce";
import type { Cut, ForceLaw, LimitName } from "./cut";
import { cuttingForce } from "./cuttingForce";

/** Multipliers on the uncertain constants: bite and gullet room together, specific force, feed force per cutting force. */
export interface Scenario {
  readonly rate: number;
  readonly force: number;
  readonly feedShare: number;
}

/** Every uncertain constant at its middle. */
export const nominal: Scenario = { rate: 1, force: 1, feedShare: 1 };

/** What is pushed into one depth: feed per band travel u [-], before motor and maximum feed, and what holds it. */
interface Pushed {
  readonly u: number;
  readonly by: LimitName;
}

/** Feed at one depth [mm/min], the band speed there [mm/min], and what holds it. */
interface Held {
  readonly feed: number;
  readonly speed: number;
  readonly by: LimitName;
}

function pushedAt(station: Station, cut: Cut, law: ForceLaw, { rate, feedShare }: Scenario): Pushed {
  const { plan, pitch, profile, saw, credit, pitchFactor: g } = cut;
  const { feedForce, constantFeed } = saw.limits;
  // A saw of constant rate holds the bite of this depth, one of constant feed that of the mean width.
  const width = constantFeed ? profile.meanWidth : station.contact;
  const usual = (cut.bite * rate * Math.min(1, width / (k.fullTeeth.value * plan.target)) * g) / width;
  const full = (cut.room * rate * g) / Math.max(width, station.contact);
  const held: Pushed = full < usual ? { u: full, by: "gullet" } : { u: usual, by: "usual rate" };
  if (feedForce === undefined) return held;
  const force = feedForce(station.extent) / (k.feedShare.value * feedShare);
  const teeth = station.contact / pitch.mean;
  // The force rises with the chip: where the feed is within it, no chip is asked for.
  if (cuttingForce({ chip: (held.u * pitch.mean) / credit, teeth, law }) <= force) return held;
  return { u: (credit * chipAtForce({ force, teeth, law })) / pitch.mean, by: "feed force" };
}

/** The motor slows the band and keeps the chip; under the slowest speed the chip is thinned. Then the maximum feed. */
function heldAt(station: Station, cut: Cut, law: ForceLaw, { u, by }: Pushed): Held {
  const { speed, slowest, wanted } = cut.speeds;
  const { power, maximumFeed } = cut.saw.limits;
  let held: Held = { feed: u * speed, speed, by };
  if (power !== undefined) {
    const { mean } = cut.pitch;
    const teeth = station.contact / mean;
    const can = (wattWork * power) / cuttingForce({ chip: u * mean, teeth, law });
    const least = Math.min(speed, Math.max(slowest, Math.min(k.motorSpeed.value, k.motorShare.value * wanted)));
    if (can < least) {
      const chip = chipAtForce({ force: (wattWork * power) / least, teeth, law });
      held = { feed: (chip * least) / mean, speed: least, by: "motor power" };
    } else if (can < speed) held = { feed: u * can, speed: can, by: "motor power" };
  }
  return maximumFeed !== undefined && maximumFeed < held.feed
    ? { feed: maximumFeed, speed: held.speed, by: "maximum feed" }
    : held;
}

/** Place of the least value. */
const leastAt = (count: number, of: (i: number) => number): number => {
  let least = 0;
  for (let i = 1; i < count; i += 1) if (of(i) < of(least)) least = i;
  return least;
};

/** The way down, depth by depth, and the depth that governs a constant feed [mm]. */
export interface Way {
  readonly law: ForceLaw;
  readonly stations: readonly Station[];
  readonly pushed: readonly Pushed[];
  readonly held: readonly Held[];
  readonly depth: number;
}

/**
 * What holds at every depth: u = min(b·min(1, L/6p*), room)·g/L, at most what the feed force allows; the motor lowers the
 * band speed; the maximum feed. With a constant feed the depth that allows least governs the whole way.
 * @param cut profile [mm], pitch [mm], speed [mm/min], bite and room [mm], force law [N/mm²], limits [mm/min, N, W]
 * @param scenario multipliers of the uncertain constants [-]
 * @returns stations [mm], what is pushed into each [-] and held at each [mm/min]
 * @source see runCut
 */
export function wayDown(cut: Cut, scenario: Scenario): Way {
  const { kc11, mc, kerf } = cut.saw.force;
  const law = { kc11: kc11 * scenario.force, mc, kerf };
  const stations = cut.stations.filter((s) => s.contact > 0);
  const free = stations.map((s) => pushedAt(s, cut, law, scenario));
  if (!cut.saw.limits.constantFeed)
    return { law, stations, pushed: free, held: stations.map((s, i) => heldAt(s, cut, law, free[i]!)), depth: 0 };
  const governing = leastAt(free.length, (i) => free[i]!.u);
  const held = stations.map((s) => heldAt(s, cut, law, free[governing]!));
  const slowest = held[leastAt(held.length, (i) => held[i]!.feed)]!;
  return {
    law,
    stations,
    pushed: free.map(() => free[governing]!),
    held: held.map(() => slowest),
    depth: stations[governing]!.depth,
  };
}
